import { signedValue } from '../measurement/offset-side.ts'
import type { Reading } from '../measurement/reading.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { exactLength, type LengthUnit, toMetres } from '../units/exact-length.ts'
import { inches, type Metres } from '../units/quantity.ts'
import { kindOf } from '../units/quantity-kinds.ts'
import type { Verdict } from '../verdicts/verdict.ts'
import { type Seen, type Standing, standingAsAsked } from './standing.ts'

/**
 * The run as the readings have it; what nobody read stands as it was asked for. Spaces are left as laid out: which of two
 * posts is out of place, a space alone does not say.
 *
 * @param readings  those that answer what is asked, in the order that counts
 */
export function standingAsRead(model: RunModel, verdicts: readonly Verdict[], readings: readonly Reading[]): Standing {
  const asked = standingAsAsked(model)
  const reasons = new Map(verdicts.map(({ requirement, because }) => [requirement, because]))
  const lengths = new Map<string, Metres>()
  for (const [id, because] of reasons)
    if (because.kind === 'measured' && kindOf(because.unit) === 'length')
      lengths.set(id, toMetres(exactLength(because.value, because.unit as LengthUnit)))
  for (const { of, answer } of readings)
    if (answer.kind === 'measured' && of.endsWith('/lateral-offset')) lengths.set(of, toMetres(signedValue(answer)))
  return {
    posts: asked.posts.map((post) => ({
      ...post,
      away: lengths.get(`${post.id}/lateral-offset`) ?? lengths.get(`${post.id}/flare-offset`) ?? post.away,
      top: lengths.get(`${post.id}/rail-height`) ?? post.top,
      stub: lengths.get(`${post.id}/stub-height`) ?? post.stub,
    })),
    panels: asked.panels.map((panel) => {
      const length = reasons.get(`${panel.id}/panel-length`)
      const label = length?.kind === 'chosen' ? length.label : null
      return {
        ...panel,
        length: label?.kind === 'choice of panel' ? inches(label.inches) : panel.length,
        bow: lengths.get(`${panel.id}/straightness`) ?? 0,
      }
    }),
    seen: (requirement): Seen | null => {
      const because = reasons.get(requirement)
      if (because?.kind === 'chosen') return { kind: 'choice', choice: because.choice, right: because.right }
      const length = lengths.get(requirement)
      return length === undefined ? null : { kind: 'length', length }
    },
  }
}
