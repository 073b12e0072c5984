import type { Printers } from '../../print.ts'
import type { SheetProblem } from '../../problems/sheet.ts'

export const sheetProblems: Printers<SheetProblem> = {
  'own rule id': () => 'un id propio, no uno que se deriva de la disposición y de la ficha',
  'place of a run': () => '"each post", "each splice" o "unit" para un tramo',
  'text of sheet': () => 'un texto que está en esta ficha',
  'picture at most': ({ bytes }) => `una imagen de ${bytes / 1000} kB como máximo`,
  'picture of type': ({ type }) => `una imagen del tipo ${type}`,
  'said in language': ({ to }) => `también su traducción a ${to}`,
  'another language': ({ language }) => `otro idioma que ${language}, en que está escrita la ficha`,
  'marked values': ({ marked }) =>
    marked === ''
      ? 'ningún valor entre llaves, como el texto'
      : `los mismos valores entre llaves que el texto (${marked})`,
  'topic or rule': () => 'un tema derivado que se lee, o el id de una regla de esta ficha',
  'special posts': () => 'qué son los postes especiales',
  'no special posts': () => 'null, porque no hay postes especiales',
  'origin post': () => '0, porque el poste 1 es el origen',
  'key of sources': ({ sources }) => `una clave de sources (${sources.join(', ')})`,
  'number for role': ({ role }) => `un número, porque el papel es ${role}`,
  'at least low': ({ value }) => `al menos el límite inferior, ${value}`,
  'at least nominal': ({ value }) => `al menos el nominal, ${value}`,
  'piece of sheet': ({ pieces, last }) =>
    `uno de los ${last} ${{ posts: 'postes', panels: 'paneles' }[pieces]} de la ficha`,
  'right choice': () => 'al menos una opción correcta',
  'wrong choice': () => 'al menos una opción incorrecta',
  'less than full': ({ inches }) => `menos que la separación entera, ${inches}`,
  'less than half': ({ inches }) => `menos que la mitad de separación, ${inches}`,
  'post in order': ({ number }) => `${number}, los postes van en orden desde 1`,
  'beyond post before': ({ inches }) => `más de ${inches}, donde está el poste anterior`,
}
