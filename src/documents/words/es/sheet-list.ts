import type { sheetList as english } from '../en/sheet-list.ts'

/** The list of what of a sheet is not confirmed yet. */
export const sheetList: typeof english = {
  title: 'Números por confirmar',
  how: 'Compare cada línea con el documento a la vista. Escriba la página donde dice lo mismo, o lo que dice de otro modo; después anótelo en la página de la ficha.',
  edition: (version) => `edición ${version}`,
  notSaved: (version) => `edición ${version} con cambios aún sin guardar`,
  left: (n, all) => `${n} de ${all} datos están sin confirmar`,
  document: 'Documento y su edición',
  by: 'Comprobado por',
  date: 'Fecha',
  states: 'Lo que dice la ficha',
  requires: 'Lo que se exige por ello',
  page: 'Página',
  otherwise: 'Dice otra cosa',
}
