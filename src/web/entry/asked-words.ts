import type { Layout } from '../../core/layout/layout.ts'
import { measurableTopics } from '../../core/requirements/derived-topics.ts'
import { spacePlace, splicePlace } from '../../core/requirements/places.ts'
import type { Place } from '../../core/requirements/requirement.ts'
import { placesById } from '../../core/verdicts/free-findings.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { m } from '../messages.ts'
import { placeWords } from './reading-words.ts'

/**
 * What `of` asks and the version in force may not, with its place by name: by its number of today while the run has it,
 * else by the last number that it had, and in which version. What is asked there keeps its id: the words for it are those
 * of a version whose sheets are not at hand.
 */
export function askedWords(of: string, judged: Pick<JudgedRun, 'model' | 'versions' | 'run'>): string {
  const [id = '', topic] = of.split('/')
  const here = placesById(judged.model).get(id)?.place
  const place = here === undefined ? goneWords(id, judged) : placeWords(here, judged.run.units)
  if (topic === undefined) return place
  const measured = measurableTopics.find((one) => one === topic)
  if (measured === undefined) return `${place}, ${topic}`
  return measured === 'along' ? m.entry.along(place) : m.entry.offset(place)
}

function goneWords(id: string, { versions, run }: Pick<JudgedRun, 'versions' | 'run'>): string {
  const earlier = run.version?.earlier ?? []
  for (const [i, version] of [...earlier.entries()].reverse()) {
    const layout = versions.get(version.id)?.layout
    const place = layout === undefined ? null : pieceOf(layout, id)
    if (place !== null) return `${placeWords(place, run.units)}, ${m.earlier.version(i + 1)}`
  }
  return id
}

function pieceOf({ posts, spaces, panels, splices }: Layout, id: string): Place | null {
  const has = (one: { readonly id: string }): boolean => one.id === id
  const post = posts.find(has)
  if (post !== undefined) return { id, kind: 'post', number: post.number, alongInches: post.alongInches, own: null }
  const panel = panels.find(has)
  if (panel !== undefined) return { id, kind: 'panel', number: panel.number, alongInches: panel.fromInches, own: null }
  const space = spaces.find(has)
  if (space !== undefined) return spacePlace(space)
  const splice = splices.find(has)
  return splice === undefined ? null : splicePlace(splice)
}
