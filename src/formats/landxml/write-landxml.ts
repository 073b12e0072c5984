import type { AlignmentElement } from '../../core/alignment/horizontal-alignment.ts'
import { endStation } from '../../core/alignment/horizontal-alignment.ts'
import { azimuthAlong, type Clothoid, endOf, pointAlong } from '../../core/geometry/clothoid.ts'
import { movedBy, type Point, seenFrom } from '../../core/geometry/point.ts'
import type { Metres } from '../../core/units/quantity.ts'
import { type LandXml, type LandXmlAlignment, type LinearUnit, landXmlNamespace, metresFrom } from './landxml.ts'

/**
 * A LandXML 1.2 file with these alignments. A reversing spiral is written as two, which meet where it is straight.
 * The same input gives the same text: `date` (YYYY-MM-DD) and `time` (HH:MM:SS) are the caller's.
 */
export function writeLandXml({ unit, alignments }: LandXml, date: string, time: string): string {
  const size = metresFrom[unit](1)
  const print: Printer = (length) => printNumber(length / size)
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<LandXML xmlns="${landXmlNamespace}" version="1.2" date="${escaped(date)}" time="${escaped(time)}">`,
    `  <Units>${unitsElement(unit)}</Units>`,
    '  <Alignments>',
    ...alignments.flatMap((alignment) => alignmentLines(alignment, print)),
    '  </Alignments>',
    '</LandXML>',
    '',
  ].join('\n')
}

type Printer = (length: Metres) => string

export function unitsElement(unit: LinearUnit): string {
  const angles = 'angularUnit="decimal degrees" directionUnit="decimal degrees"'
  return unit === 'meter'
    ? `<Metric areaUnit="squareMeter" linearUnit="meter" volumeUnit="cubicMeter" temperatureUnit="celsius" pressureUnit="HPA" ${angles}/>`
    : `<Imperial areaUnit="squareFoot" linearUnit="${unit}" volumeUnit="cubicFeet" temperatureUnit="fahrenheit" pressureUnit="inHG" ${angles}/>`
}

function alignmentLines({ name, horizontal, equations }: LandXmlAlignment, print: Printer): readonly string[] {
  const start = horizontal.startStation
  const length = endStation(horizontal) - start
  return [
    `    <Alignment name="${escaped(name)}" length="${print(length)}" staStart="${print(start)}">`,
    '      <CoordGeom>',
    ...horizontal.elements.flatMap(splitAtInflexion).map((element) => `        ${elementLine(element, print)}`),
    '      </CoordGeom>',
    ...equations.map(
      ({ internal, back, ahead }) =>
        `      <StaEquation staAhead="${print(ahead)}" staBack="${print(back)}" staInternal="${print(internal)}"/>`,
    ),
    '    </Alignment>',
  ]
}

function splitAtInflexion(element: AlignmentElement): readonly Clothoid[] {
  const { curvatureStart, curvatureEnd, length } = element
  if (curvatureStart * curvatureEnd >= 0) return [element]
  const along = (length * curvatureStart) / (curvatureStart - curvatureEnd)
  return [
    { ...element, length: along, curvatureEnd: 0 },
    {
      start: pointAlong(element, along),
      azimuth: azimuthAlong(element, along),
      length: length - along,
      curvatureStart: 0,
      curvatureEnd,
    },
  ]
}

function elementLine(element: Clothoid, print: Printer): string {
  const point = (name: string, { easting, northing }: Point) =>
    `<${name}>${print(northing)} ${print(easting)}</${name}>`
  const { start, azimuth, length, curvatureStart, curvatureEnd } = element
  const end = endOf(element)
  if (curvatureStart === 0 && curvatureEnd === 0)
    return `<Line length="${print(length)}">${point('Start', start)}${point('End', end)}</Line>`
  const rot = curvatureStart + curvatureEnd > 0 ? 'cw' : 'ccw'
  if (curvatureStart === curvatureEnd) {
    const radius = 1 / curvatureStart
    const centre = movedBy(start, azimuth, 0, radius)
    return `<Curve rot="${rot}" crvType="arc" radius="${print(Math.abs(radius))}" length="${print(length)}">${point('Start', start)}${point('Center', centre)}${point('End', end)}</Curve>`
  }
  const radius = (curvature: number) => (curvature === 0 ? 'INF' : print(Math.abs(1 / curvature)))
  const radii = `radiusStart="${radius(curvatureStart)}" radiusEnd="${radius(curvatureEnd)}"`
  return `<Spiral spiType="clothoid" rot="${rot}" length="${print(length)}" ${radii}>${point('Start', start)}${point('PI', intersectionOf(element))}${point('End', end)}</Spiral>`
}

/** Where the tangents at both ends of a spiral meet; it turns one way only. */
function intersectionOf(element: Clothoid): Point {
  const { start, azimuth, length } = element
  const seen = seenFrom(start, azimuth, endOf(element))
  const turning = azimuthAlong(element, length) - azimuth
  return movedBy(start, azimuth, seen.ahead - seen.right / Math.tan(turning), 0)
}

/** To a billionth of the unit, without an exponent or trailing zeros. */
export const printNumber = (value: number): string =>
  value
    .toFixed(9)
    .replace(/\.?0+$/, '')
    .replace(/^-0$/, '0')

export const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;').replace(/\s/g, ' ')
