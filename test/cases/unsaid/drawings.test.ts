import { describe, expect, it } from 'vitest'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { leftUnsaid, rejoined, unsaidIn } from '../../pseudo/find-unsaid.ts'
import { pseudo, said } from '../../pseudo/pseudo.ts'
import { drawingTexts } from '../spanish/drawing-texts.ts'
import {
  detailsOf,
  elevationOf,
  figuresOf,
  judgedRuns,
  requiredRun,
  runFiles,
  stripOf,
} from '../spanish/gather-runs.ts'
import { drawingsOfSite, sites } from '../spanish/gather-sites.ts'

const print = pseudo(null)
const runs = Object.values(runFiles).map(requiredRun)
const judged = runs.flatMap((run) => judgedRuns(run).slice(-17, -12))

const drawn: readonly (readonly [output: string, drawings: readonly Drawing[]])[] = [
  ['figures', runs.flatMap((run) => figuresOf(run, print))],
  ['strips', [...runs, ...judged].map((run) => stripOf(run, print))],
  ['elevations', runs.map((run) => elevationOf(run, print))],
  ['details', runs.flatMap((run) => detailsOf(run, print))],
  ['plans and sections', sites.slice(-12).flatMap((site) => drawingsOfSite(site, print))],
]

describe('in a language that nobody speaks', () => {
  it.each(drawn)('%s have no text unsaid', (output, drawings) => {
    expect(drawings.length).toBeGreaterThan(10)
    expect(
      leftUnsaid(
        output,
        drawings.flatMap((one) => rejoined(drawingTexts(one)).flatMap(unsaidIn)),
      ),
    ).toEqual([])
  })

  it('the search finds what is not said, and what is said inside of it, and nothing else', () => {
    const kinds = print.say({ kind: 'theirs', text: 'Alder Creek' })
    expect(unsaidIn(`${said(`Post 3 at ${kinds}`)} 9 ft 4 1/2 in ${kinds}`)).toEqual([])
    expect(unsaidIn(`${said('Post 3')} stands ${said('apart')}`)).toEqual(['stands'])
    // @ts-expect-error a sentence is not said, only what it says is
    expect(() => print.say('The rail is bolted.')).toThrow()
    expect(rejoined(['⟦Posts~~', 'of~ the run⟧', 'left'])).toEqual(['⟦Posts~~ of~ the run⟧', 'left'])
  })
})
