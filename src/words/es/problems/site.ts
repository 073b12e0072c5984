import type { Printers } from '../../print.ts'
import type { SiteProblem } from '../../problems/site.ts'

export const siteProblems: Printers<SiteProblem> = {
  'outside travelled way': () => 'un peligro fuera de la calzada, a 0 o más de su borde (este está en el carril)',
  'far side': () => 'la distancia lateral de su lado lejano, o beyondClearZone true',
  'no slope of vertical face': () => 'ninguna inclinación de una cara que es vertical',
  'no median': () => 'ninguna mediana en una vía que no está dividida',
  'width of median': () => 'el ancho de la mediana, para hallar el borde desde el eje',
  'flare rate': () => '14 o "14:1"',
  slope: () => '6 o "1V:6H"',
  'station beyond equation': () =>
    'una estación más adelante en el alineamiento que la ecuación anterior, y dentro de él',
  'beyond near side': ({ value, unit }) => `al menos la distancia lateral de su lado cercano, ${value} ${unit}`,
  'side of first hazard': ({ side }) => `el lado del primer peligro, "${side}": un sitio es un tramo de un lado`,
  'barrier in front': ({ hazard, bound, value, unit }) =>
    `una barrera delante de ${JSON.stringify(hazard)}, ${bound === 'at most' ? 'a lo más a' : 'a menos de'} ${value} ${unit} del borde de la calzada`,
  'station after': ({ from }) =>
    `una estación igual o posterior a \`from\`, ${from}: las estaciones crecen a lo largo de la vía`,
  'station on alignment': ({ from, to }) =>
    `una estación dentro del alineamiento, que va de ${from} a ${to} sin ecuaciones de estaciones`,
  'one place': ({ places }) =>
    `un solo lugar: esta estación sale dos veces, escriba en su lugar la distancia a lo largo del alineamiento (${places.join(' o ')})`,
  'alignment to': ({ end }, print) => `un alineamiento que termine en ${print.say(end)}`,
  elements: ({ count }) => `${count} elementos`,
}
