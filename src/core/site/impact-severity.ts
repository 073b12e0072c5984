/**
 * Impact severity of a crash test, 1/2 M (V sin θ)², in kilojoules.
 *
 * @param mass   test inertial mass, kg
 * @param speed  at impact, m/s
 * @param angle  between path and barrier, rad
 * @source AASHTO Manual for Assessing Safety Hardware, 2016, appendix A
 */
export const impactSeverity = (mass: number, speed: number, angle: number): number =>
  (mass * (speed * Math.sin(angle)) ** 2) / 2000

/** 1 kJ in kip-feet, by the exact foot (0.3048 m) and pound-force (0.45359237 kg at 9.80665 m/s²). */
export const kipFeetPerKilojoule = 1 / (0.3048 * 0.45359237 * 9.80665)
