import type { EndSheet } from '../../../core/hardware/hardware-sheet.ts'
import { sheetText } from '../../../core/hardware/sheet-text.ts'
import type { Metres } from '../../../core/units/quantity.ts'
import { inches } from '../../../core/units/quantity.ts'
import { area, group, line, point, polyline } from '../../draw.ts'
import type { Item, Point } from '../../drawing.ts'
import { siteWords } from '../../words/site-words.ts'
import type { BarrierEnd, EndUnit } from './barrier-line.ts'
import type { Callout } from './callouts.ts'
import { lateralDimension } from './dimension-items.ts'
import type { Direction } from './need-items.ts'
import type { PlanCanvas } from './plan-canvas.ts'
import { saidLength } from './site-words.ts'

/** The barrier between its end units, and these. */
export function barrierItems(canvas: PlanCanvas): readonly Item[] {
  const { barrier, input } = canvas
  const [a, b] = [barrier.approach, barrier.departure].map((end) => end.unit?.inner ?? end.station)
  const points = facePoints(canvas, barrier.lateralAt, Math.min(a!, b!), Math.max(a!, b!))
  const at = offsetPlace(canvas)
  return [
    group('barrier', siteWords(input.print).barrierFrom(saidLength(input.site.barrier.offset, input)), [
      polyline('barrier', points),
      ...lateralDimension(canvas, at, input.site.barrier.offset),
    ]),
    ...ends(canvas).flatMap(([direction, end]) =>
      end.unit === null ? [] : [unitItems(canvas, direction, end, end.unit)],
    ),
  ]
}

const ends = ({ barrier }: PlanCanvas): readonly (readonly [Direction, BarrierEnd])[] => [
  ['approach', barrier.approach],
  ['departure', barrier.departure],
]

/** The line of the face between two stations, `from` below `to`: its corners on a straight road, every 2 m elsewhere. */
function facePoints(
  { frame, barrier, input }: PlanCanvas,
  lateralAt: (station: Metres) => Metres,
  from: Metres,
  to: Metres,
): Point[] {
  const isStraight = input.site.road.alignment.kind === 'straight'
  const pieces = isStraight ? 1 : Math.max(1, Math.ceil((to - from) / 2))
  const stations = Array.from({ length: pieces + 1 }, (_, i) => from + ((to - from) * i) / pieces)
  for (const bend of [barrier.approach.flareFrom, barrier.departure.flareFrom])
    if (bend !== null && bend > from && bend < to) stations.push(bend)
  return stations.sort((x, y) => x - y).map((station) => frame.toDrawing(station, lateralAt(station)))
}

/** Where the offset of the parallel part is dimensioned: between the first hazard and the flare or the end of need. */
function offsetPlace({ barrier, input }: PlanCanvas): Metres {
  const { station, flareFrom, outward } = barrier.approach
  const bend = flareFrom !== null && outward * (station - flareFrom) > 0 ? flareFrom : station
  const fronts = input.site.hazards.map((hazard) => (outward === -1 ? hazard.from : hazard.to))
  const front = outward === -1 ? Math.min(...fronts) : Math.max(...fronts)
  return front + (bend - front) * 0.5
}

/** Rail with its posts, and a sign at the tip. */
function unitItems(canvas: PlanCanvas, direction: Direction, end: BarrierEnd, unit: EndUnit): Item {
  const { frame, perPoint } = canvas
  const [low, high] = [Math.min(unit.tip, unit.inner), Math.max(unit.tip, unit.inner)]
  const behind = (station: Metres, points: number): Point => {
    const at = frame.toDrawing(station, unit.lateralAt(station))
    const turn = ((frame.turnAt(station) + frame.outward * 90) * Math.PI) / 180
    return point(at.x + points * perPoint * Math.cos(turn), at.y + points * perPoint * Math.sin(turn))
  }
  const posts = unit.sheet.posts.map(({ along }) => {
    const share = inches(along) / inches(unit.sheet.listedLength.inches)
    const station = unit.tip + (unit.inner - unit.tip) * share
    return line('end units', behind(station, 0), behind(station, 3.2))
  })
  const reach = canvas.alongOf(3) * end.outward
  const head = [
    behind(unit.tip - reach, -2),
    behind(unit.tip + reach * 0.3, -2),
    behind(unit.tip + reach * 0.3, 3.5),
    behind(unit.tip - reach, 3.5),
  ]
  return group(`${direction}-unit`, nameOf(unit.sheet, canvas), [
    polyline('barrier', facePoints(canvas, unit.lateralAt, low, high)),
    ...posts,
    area('end units', head, 'solid'),
  ])
}

const nameOf = (sheet: EndSheet, { input: { print } }: PlanCanvas): string => print.say(sheetText(sheet, sheet.name))

export function barrierCallouts(canvas: PlanCanvas): readonly Callout[] {
  const { barrier, input, frame } = canvas
  const { site, print } = input
  const words = siteWords(print)
  const at = offsetPlace(canvas)
  const { flare, offset } = site.barrier
  const units = ends(canvas).flatMap(([direction, { unit }]): Callout[] => {
    if (unit === null) return []
    const { listedLength, lengthOfNeedFrom } = unit.sheet
    const long = (length: number) => saidLength(inches(length), input)
    return [
      {
        id: `${direction}-unit`,
        at: frame.toDrawing(unit.tip, unit.lateralAt(unit.tip)),
        words: words.unit(nameOf(unit.sheet, canvas), long(listedLength.inches), long(lengthOfNeedFrom.inches)),
      },
    ]
  })
  const flares = ends(canvas).flatMap(([, { flareFrom, station, outward }]): Callout[] => {
    if (flare === null || flareFrom === null || outward * (station - flareFrom) <= 0) return []
    const middle = (flareFrom + station) / 2
    return [
      {
        id: 'flare',
        at: frame.toDrawing(middle, barrier.lateralAt(middle)),
        words: words.flare(Number(flare.rate.toFixed(2))),
      },
    ]
  })
  return [
    {
      id: 'barrier',
      at: frame.toDrawing(at, offset),
      words: words.face(saidLength(offset, input)),
    },
    ...flares,
    ...units,
  ]
}
