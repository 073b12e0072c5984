import { describe, expect, it } from 'vitest'
import { usSurveyFeet } from '../../core/units/quantity.ts'
import { writePointsXml } from './write-points.ts'

describe('points of a LandXML file', () => {
  const position = { easting: usSurveyFeet(630128.2058), northing: usSurveyFeet(789591.521) }
  const point = { name: '1', position, elevation: usSurveyFeet(12.5), code: 'POST', description: 'a <b> & "c"' }

  it('gives northing, easting and elevation in the unit that it names', () => {
    const written = writePointsXml([point], 'US survey foot', '2026-05-12', '10:05:00')
    expect(written).toContain('linearUnit="USSurveyFoot"')
    expect(written).toContain('>789591.521 630128.2058 12.5</CgPoint>')
    expect(written).toContain('desc="a &lt;b> &amp; &quot;c&quot;"')
  })

  it('leaves an unknown height out', () => {
    const written = writePointsXml([{ ...point, elevation: null }], 'metre', '2026-05-12', '10:05:00')
    expect(written).toMatch(/">\d+\.\d+ \d+\.\d+<\/CgPoint>/)
    expect(written).toContain('<Metric ')
  })
})
