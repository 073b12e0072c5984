import { feetInchesText } from '../../../core/hardware/dimension-text.ts'
import type { Print, Printers } from '../../print.ts'
import type { RunProblem } from '../../problems/run.ts'

export const runProblems: Printers<RunProblem> = {
  'no opposing traffic': () => 'false o nada donde el tránsito va en un sentido',
  'start of flare': () => 'dónde empieza el abocinado, en "firstFrom" o "secondFrom"',
  'stretch to shield': () => 'el trecho que hay que proteger, porque los dos extremos no están fijos',
  'from before to': () => 'un principio antes que su final',
  'place of bridge': () => 'dónde está la conexión con el puente',
  'beyond start': ({ inches }) => `más de ${inches} in, donde empieza`,
  'beyond first flare': ({ inches }) => `más de ${inches} in, donde empieza el abocinado del primer extremo`,
  'beyond first end': ({ inches }) =>
    `más de ${inches} in, donde está el primer extremo; las distancias crecen aguas abajo`,
  'at most inches': ({ inches }) => `a lo más ${inches} in`,
  'longest run': ({ inches }) =>
    `a lo más ${inches} in (10 millas) en un tramo: divida uno más largo en un empalme, en tramos que lo nombren como standingSplice`,
  inches: ({ inches }) => `${inches} in`,
  stretch: ({ fromInches, toInches }) => `${fromInches} in a ${toInches} in`,
  'posts at most': ({ posts }) =>
    `a lo más ${posts} postes en un tramo: divídalo en un empalme, en tramos que lo nombren como standingSplice`,
  posts: ({ posts }) => `${posts} postes`,
  'sheet id': ({ ids }) => `el id de una ficha: ${ids.join(', ')}`,
  'joined system': ({ unit, systems }, print) => `un sistema al que se una: ${print.say(unit)} (${systems.join(', ')})`,
  'system named': ({ system }, print) => print.say(system),
  'counted run': () =>
    'una ficha o un empalme existente: un extremo solo puede ser desconocido en un tramo contado (`counted`)',
  'nothing where counted': () => 'nada, donde el tramo se contó',
  'end where counted': () => 'una ficha, o `unknown` donde el tramo se contó',
  'end looked at': () => 'un extremo que alguien miró: en un tramo contado, por lo menos uno',
  'at most counted': ({ pieces }) => `a lo más ${pieces}, los que se contaron`,
  'lawful run': () => 'un tramo que se pueda disponer según las fichas',
  'within obstruction': () => 'un lugar dentro de una de las obstrucciones',
  'lawful layout': () => 'una de las disposiciones válidas (vea la orden layout)',
  'no lawful run': ({ reasons }, print) => `ninguno: ${reasons.map(print.say).join('; ')}`,
  'decided layout': ({ panels, fromInches, reasons }, print) =>
    `paneles ${panels.join(', ')} desde ${fromInches} in${reasons.length === 0 ? '' : ` (${reasons.map(print.say).join('; ')})`}`,
  'side of road': () => '"right" o "left", para situar el tramo en su vía',
  'traffic of left side': () =>
    'la clase de tránsito, que dice si un tramo de la izquierda va en el sentido de las estaciones',
  'station of alignment': () => 'una estación del alineamiento',
  'station with one meaning': () =>
    'una estación del alineamiento a la que sus ecuaciones de estaciones dejen un solo sentido',
  'run within stations': ({ from, to }) =>
    `un tramo entre las estaciones ${from.toFixed(3)} m y ${to.toFixed(3)} m del alineamiento`,
  'rail beyond stations': ({ along }) =>
    `baranda que sale de él a ${along.toFixed(3)} m del poste 1 a lo largo de la baranda`,
  'units of its road': ({ road }) =>
    `un tramo en unidades ${road === 'metre' ? 'métricas' : 'de EE. UU.'}, como su vía en ${road === 'metre' ? 'metros' : road === 'foot' ? 'pies' : 'pies de agrimensura de EE. UU.'}: la estación de su origen se podría leer de dos maneras`,
  'units of run': ({ units }) => `uno en unidades ${units === 'metric' ? 'métricas' : 'de EE. UU.'}`,
  'road without breaks': () => 'una vía que siga sin hueco ni quiebre hasta el final del tramo',
  'break of road': ({ station, metres, degrees }, print) =>
    `en la estación ${station} sigue ${breakText(metres, degrees, print)}`,
  'radius beyond offset': ({ metres }) => `una curva de más de ${metres.toFixed(3)} m de radio del lado del tramo`,
  'radius in metres': ({ metres }) => `un radio de ${metres.toFixed(3)} m`,
  'stated flare offset': () => 'una ficha que indique la distancia lateral nominal de su abocinado',
  'flare to free end': () => 'un abocinado hacia un extremo que puede dejar la línea de la baranda',
  'flare to bridge': () => 'uno hacia un extremo de puente',
  'flare to standing run': () => 'uno hacia un tramo existente',
  'flare on straight': () =>
    'una vía recta junto a la baranda abocinada: por lo general no se usa abocinado en una curva, y ahí no se estaquea',
  'flare clear of unit': ({ sheet }) =>
    `un abocinado que empieza en la baranda propia del tramo, fuera de la unidad de extremo ${sheet}: un doblez dentro de ella no se ensayó`,
  'bend inside unit': ({ flareInches, unitInches }) =>
    `un doblez a ${feetInchesText(flareInches)} a lo largo de la baranda desde el poste 1, donde la unidad llega hasta ${feetInchesText(unitInches)}`,
  'area of reference': ({ name, code }) => `coordenadas dentro del área de ${name} (EPSG:${code})`,
  'outside area': ({ of, easting, northing }) =>
    `${of} en este ${easting.toFixed(1)} m, norte ${northing.toFixed(1)} m`,
  'run between boundaries': () => 'un tramo entre sus dos límites',
  'boundary at post': ({ end, posts }) =>
    `un límite en uno de los ${posts} postes del ${end === 'first' ? 'primer' : 'segundo'} extremo`,
  'post numbered': ({ number }) => `poste ${number}`,
  'crossed boundaries': ({ inches }) => `un primer límite ${inches} in más allá del segundo`,
}

function breakText(metres: number, degrees: number, print: Print): string {
  const apart = metres < 0.001 ? [] : [`a ${print.length(Number(metres.toFixed(4)), 'm')}`]
  const turned =
    Math.abs(degrees) < 0.001
      ? []
      : [`girado ${Math.abs(degrees).toFixed(3)}° a la ${degrees > 0 ? 'derecha' : 'izquierda'}`]
  return print.list([...apart, ...turned], 'and')
}
