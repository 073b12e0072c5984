/** The list of what of a sheet is not confirmed yet. */
export const sheetList = {
  title: 'Numbers to confirm',
  how: 'Compare each line with the document in hand. Write the page where it says the same, or what it says otherwise; then enter it on the page of the sheet.',
  edition: (version: string) => `edition ${version}`,
  notSaved: (version: string) => `edition ${version} with changes that are not saved yet`,
  left: (n: number, all: number) => `${n} of ${all} statements are not confirmed`,
  document: 'Document and its edition',
  by: 'Checked by',
  date: 'Date',
  states: 'What the sheet states',
  requires: 'What is required by it',
  page: 'Page',
  otherwise: 'It says otherwise',
}
