// National Academies Press 27896 (2024), chapter 16, tables 85 and 88: crash test 612541-01-4 (test 3-20), inertial
// weight 2,427 lb, 62.6 mi/h, 25.5 degrees. Printed impact severity: 58.9 kip-ft.
import { expect, test } from 'vitest'
import { impactSeverity, kipFeetPerKilojoule } from '../../src/core/site/impact-severity.ts'

test('the impact severity is 58.9 kip-ft', () => {
  const severity = impactSeverity(2427 * 0.45359237, 62.6 * 0.44704, (25.5 * Math.PI) / 180)
  expect(Math.abs(severity * kipFeetPerKilojoule - 58.9)).toBeLessThanOrEqual(0.05)
})
