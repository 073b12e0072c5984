/** A length in the report's unit, to hundredths; `166.67 ft`. */
export const longText = (length: number, unit: 'ft' | 'm'): string => `${Number(length.toFixed(2)) + 0} ${unit}`
