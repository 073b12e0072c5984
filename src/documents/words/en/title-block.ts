/** The title block of drawings and documents. */
export const titleBlock = {
  cells: {
    agency: 'Agency',
    contract: 'Contract',
    project: 'Project',
    drawn: 'Drawn',
    checked: 'Checked',
    approved: 'Approved',
  },
  seal: 'Seal',
  revision: (number: number, date: string, what: string) => `Revision ${number}, ${date}: ${what}`,
  replaces: (issue: string) => `replaces ${issue}`,
}
