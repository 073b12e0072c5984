import type { CrewSheetContents } from './crew-sheet-contents.ts'
import type { DocumentLanguage } from './document-language.ts'
import type { Fact } from './run-facts.ts'

/** What stands on the sheet round its contents. */
const headings = {
  utilityTicket: 'Utility ticket',
  noTicket: 'not entered. No post is driven or pulled before the marks are there.',
  stripApart: 'The strip stands on the last pages.',
  moved: 'MOVED',
  special: 'SPECIAL',
  standing: 'stands already',
  end: 'end',
  yes: 'yes',
  no: 'no',
  post: 'Post',
  station: 'Station',
  fromPostOne: 'From post 1',
  toNext: 'To next',
  offset: 'Offset',
  block: 'Block',
  postKind: 'Post kind',
  panel: 'Panel',
  pieces: 'Pcs',
  each: 'Each',
  kind: 'Kind',
  nested: 'nested',
  hung: 'hangs already',
  nowhere: 'Nowhere.',
  heights: 'Heights and splices',
  holds: 'Hold points: call before you cover it',
  none: 'None.',
  posts: 'Posts to stake',
  departures: 'Where this run departs from standard',
  panels: 'Panels in order',
  lap: 'Lap',
  holes: 'Holes, slots and bolts; which way parts face',
  cautions: 'Cautions',
} as const

export const crewSheetHeadings = (say: DocumentLanguage['say']): Readonly<Record<keyof typeof headings, string>> =>
  Object.fromEntries(Object.entries(headings).map(([name, words]) => [name, say(words)])) as Record<
    keyof typeof headings,
    string
  >

/** The contents with each of the model's sentences said; names, routes and tickets as a person wrote them. */
export function sayCrewSheet(contents: CrewSheetContents, say: DocumentLanguage['say']): CrewSheetContents {
  const rules = (list: CrewSheetContents['laps']) =>
    list.map((rule) => ({ ...rule, places: say(rule.places), must: say(rule.must) }))
  return {
    ...contents,
    title: say(contents.title),
    facts: contents.facts.map((fact) => sayFact(fact, say)),
    posts: contents.posts.map((post) => ({ ...post, kind: say(post.kind) })),
    flare: say(contents.flare),
    panels: contents.panels.map((panel) => ({ ...panel, numbers: say(panel.numbers), name: say(panel.name) })),
    laps: rules(contents.laps),
    heights: rules(contents.heights),
    holes: rules(contents.holes),
    departures: contents.departures.map(say),
    holds: rules(contents.holds),
    cautions: contents.cautions.map(say),
  }
}

const sayFact = ({ name, value }: Fact, say: DocumentLanguage['say']): Fact => ({
  name: say(name),
  value: name === 'Route' ? value : say(value),
})
