import type { titleBlock as english } from '../en/title-block.ts'

export const titleBlock: typeof english = {
  cells: {
    agency: 'Organismo',
    contract: 'Contrato',
    project: 'Proyecto',
    drawn: 'Dibujó',
    checked: 'Revisó',
    approved: 'Aprobó',
  },
  seal: 'Sello',
  revision: (number, date, what) => `Revisión ${number}, ${date}: ${what}`,
  replaces: (issue) => `reemplaza ${issue}`,
}
