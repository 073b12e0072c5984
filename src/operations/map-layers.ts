import { nameOf } from '../core/hardware/sheet-text.ts'
import { kindOfPost } from '../core/layout/kind-of-post.ts'
import { sheetOf } from '../core/layout/sheet-of.ts'
import type { RailPlace } from '../core/staking/locate-rail.ts'
import type { GroundUnit } from '../core/units/ground-unit.ts'
import { groundFromMetres } from '../core/units/ground-unit.ts'
import { remedyOf } from '../core/verdicts/saying.ts'
import { stationText } from '../documents/stake-list-contents.ts'
import type { MapField, MapLayer } from '../formats/map/map-layer.ts'
import type { Print } from '../words/print.ts'
import type { PlacedRun } from './place-run.ts'
import type { RequiredRun } from './require-by.ts'

/** Run, posts and findings as layers of a map; stations, offsets and heights are in `unit`. */
export const mapLayers = (run: RequiredRun, placed: PlacedRun, unit: GroundUnit, print: Print): readonly MapLayer[] => [
  runLayer(run, placed, print),
  postLayer(run, placed, unit, print),
  findingLayer(placed, unit, print),
]

const text = (name: string): MapField => ({ name, type: 'text' })
const number = (name: string): MapField => ({ name, type: 'number' })

function runLayer({ run, model }: RequiredRun, { rail }: PlacedRun, print: Print): MapLayer {
  const inches = model.layout.panels.reduce((sum, panel) => sum + panel.inches, 0)
  return {
    name: 'run',
    title: 'Face of rail from end to end',
    geometry: 'line',
    fields: [
      text('run_name'),
      text('route'),
      text('side'),
      text('system'),
      number('rail_ft'),
      number('posts'),
      number('panels'),
    ],
    features: [
      {
        id: 'run',
        points: rail.map(({ position }) => position),
        values: [
          run.name,
          run.road.route,
          run.road.side,
          print.say(nameOf(model.system)),
          inches / 12,
          model.layout.posts.length,
          model.layout.panels.length,
        ],
      },
    ],
  }
}

const placeFields: readonly MapField[] = [
  number('along_ft'),
  text('station'),
  number('offset'),
  number('elevation'),
  text('unit'),
]

function placeValues(place: RailPlace, { frame }: PlacedRun, unit: GroundUnit) {
  const inUnit = (length: number): number => Math.round(groundFromMetres(length, unit) * 1e4) / 1e4 + 0
  const { alongInches, station, offset, elevation } = place
  return [
    alongInches / 12,
    stationText(station, frame, unit),
    inUnit(offset),
    elevation === null ? null : inUnit(elevation),
    unit,
  ]
}

function postLayer({ model }: RequiredRun, placed: PlacedRun, unit: GroundUnit, print: Print): MapLayer {
  return {
    name: 'posts',
    title: 'Posts, at the face of rail',
    geometry: 'point',
    fields: [number('post'), text('kind'), text('block'), text('state'), text('purpose'), ...placeFields],
    features: placed.staking.stakes.map((stake, i) => {
      const post = model.layout.posts[i]!
      const { id, number, block, state } = post
      return {
        id,
        points: [stake.position],
        values: [
          number,
          print.say(kindOfPost(post, sheetOf(model, post.unit))),
          block ? 'yes' : 'no',
          state,
          print.say(stake.purpose),
          ...placeValues(stake, placed, unit),
        ],
      }
    }),
  }
}

function findingLayer(placed: PlacedRun, unit: GroundUnit, print: Print): MapLayer {
  return {
    name: 'findings',
    title: 'Findings, where they lie along the rail',
    geometry: 'point',
    fields: [text('place'), text('what'), text('remedy'), ...placeFields],
    features: placed.findings.map(({ finding, at }) => ({
      id: `finding-${finding.id}`,
      points: [at.position],
      values: [
        print.say(finding.place),
        print.say(finding.what),
        print.say(remedyOf(finding)),
        ...placeValues(at, placed, unit),
      ],
    })),
  }
}
