/** The summary of a record. What stands in braces is put in where the page is set. */
export const summary = {
  title: 'Summary of the inspection record',
  how: 'What decides, on two pages. Every requirement with its readings stands in the record itself, which the hash names.',
  code: 'QR code',
  codeHolds: 'run and record hash',
  moreFindings: '{count} more findings stand in the record.',
  moreUnproven: '{count} more lines of what is not proven stand in the record.',
  stripElsewhere: 'The run is too long to be drawn here: its strip stands in the record.',
}
