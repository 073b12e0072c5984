import { type GroundUnit, groundFromMetres } from '../../core/units/ground-unit.ts'
import type { SurveyPoint } from '../csv/survey-point.ts'
import { type LinearUnit, landXmlNamespace } from './landxml.ts'
import { escaped, printNumber, unitsElement } from './write-landxml.ts'

const linearUnits: Readonly<Record<GroundUnit, LinearUnit>> = {
  metre: 'meter',
  foot: 'foot',
  'US survey foot': 'USSurveyFoot',
}

/**
 * A LandXML 1.2 file with these points: northing, easting and, where it is known, elevation. The same input gives the
 * same text: `date` (YYYY-MM-DD) and `time` (HH:MM:SS) are the caller's.
 */
export function writePointsXml(points: readonly SurveyPoint[], unit: GroundUnit, date: string, time: string): string {
  const number = (length: number): string => printNumber(groundFromMetres(length, unit))
  const text = (words: string): string => escaped(words.replace(/\p{Cc}/gu, ' '))
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<LandXML xmlns="${landXmlNamespace}" version="1.2" date="${escaped(date)}" time="${escaped(time)}">`,
    `  <Units>${unitsElement(linearUnits[unit])}</Units>`,
    '  <CgPoints>',
    ...points.map(({ name, position, elevation, code, description }) => {
      const place = [position.northing, position.easting, ...(elevation === null ? [] : [elevation])].map(number)
      return `    <CgPoint name="${text(name)}" code="${text(code)}" desc="${text(description)}">${place.join(' ')}</CgPoint>`
    }),
    '  </CgPoints>',
    '</LandXML>',
    '',
  ].join('\n')
}
