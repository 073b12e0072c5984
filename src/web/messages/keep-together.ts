/** A number and its unit, and the whole and its fraction, stay on one line in however narrow a cell. */
export const keepTogether = (text: string): string =>
  text.replace(/(\d) (?=(?:\d+\/\d+|in|ft|mm|cm|m|%|°|lbf·ft|N·m|lbf|kN|mph|km\/h)(?![\p{L}\d]))/gu, '$1\u00a0')
