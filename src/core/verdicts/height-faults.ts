import { measuresLength } from '../hardware/measures-length.ts'
import { exactLength } from '../units/exact-length.ts'
import { type HeightReading, heightRemedy } from './height-remedy.ts'
import { againstRule, findingOf, type Judged, type JudgedById } from './judged.ts'
import type { Proof } from './proof.ts'
import type { Finding } from './verdict.ts'

/** Rail and stub of one post move together, so they share one finding and one remedy. */
export function heightFaults(failed: readonly Judged[], byId: JudgedById, proof: Proof): readonly Finding[] {
  const posts = new Map<string, Judged[]>()
  for (const one of failed) {
    const { id } = one.requirement.place
    posts.set(id, [...(posts.get(id) ?? []), one])
  }
  return [...posts].map(([post, here]) => {
    const [rail, stub] = [byId.get(`${post}/rail-height`), byId.get(`${post}/stub-height`)]
    const [railRead, stubRead] = [heightReading(rail, proof), heightReading(stub, proof)]
    const unread =
      stub !== undefined && stubRead === null ? 'stub' : rail !== undefined && railRead === null ? 'rail' : null
    const steps = heightRemedy(here[0]!.requirement.place, railRead, stubRead, unread, proof)
    return findingOf(here, here.map(againstRule), steps)
  })
}

function heightReading(one: Judged | undefined, proof: Proof): HeightReading | null {
  if (one?.verdict.because.kind !== 'measured' || one.requirement.look.kind !== 'measure') return null
  const { because } = one.verdict
  const { limits } = one.requirement.look
  if (!measuresLength(limits)) return null
  return { value: exactLength(because.value, limits.unit), limits, ...proof.of(one.verdict, because) }
}
