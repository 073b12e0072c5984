import type { FitSaying } from '../../core/fit/fit-saying.ts'
import type { SplicePosition } from '../../core/hardware/hardware-sheet.ts'
import { lengthIn } from '../../core/units/exact-length.ts'
import type { Printers } from '../print.ts'
import { exceedingInches, reachingInches } from '../reach.ts'
import { curbFace, fitChanges, sheetKind, spacingWord } from './fit-changes.ts'

export const fit: Printers<FitSaying> = {
  ...fitChanges,
  'crash test of sheet': ({ sheet }, print) => `ensayo de choque para esta obra y velocidad: ${print.say(sheet)}`,
  'end on chosen system': ({ sheet }, print) => `${print.say(sheet)}: con el sistema elegido`,
  'against adjoining run': () => 'altura de la baranda y empalmes frente al tramo contiguo',
  'sheet at end': ({ sheet, end }, print) =>
    `${print.say(sheet)}: en el extremo de ${end === 'approach' ? 'llegada' : 'salida'}`,
  'barrier before transition': () => 'barrera antes de la transición',
  'length of run': () => 'longitud del tramo, de anclaje a anclaje',
  'room behind rail': ({ hazard, spacing }, print) =>
    `espacio detrás de la baranda hasta ${print.theirs(hazard)}, con separación ${spacingWord[spacing]}`,
  'platform of end': ({ of }) => `plataforma delante y al lado del ${sheetKind[of]}`,
  'level ground behind post 1': () => 'terreno llano detrás del poste 1',
  'clear area': ({ extent }) =>
    `área despejada detrás del extremo traspasable, ${extent === 'length' ? 'largo' : 'ancho'}`,
  'foreslope beside platform': () => 'talud descendente junto a la plataforma',
  'ground to slope break': (_, print) =>
    `terreno detrás de los postes hasta el quiebre del talud, postes de ${print.written('6 ft', 6, 'ft')}`,
  'curb before rail': ({ by }) => `bordillo delante de la baranda${by === 'study' ? ', según otro estudio' : ''}`,
  'curb before terminal': ({ terminal }, print) => `bordillo delante de: ${print.say(terminal)}`,

  'joins systems': ({ systems }) => `se une a ${systems.join(', ')}`,
  'height within': ({ height, within, splices }, print) =>
    `${print.length(lengthIn(height, 'in'), 'in')} con ${print.length(lengthIn(within, 'in'), 'in')} de margen, ${splicesText(splices)}`,
  'barrier before transition at least': ({ inches, leastInches, plainInches }, print) =>
    `al menos ${print.feetInches(inches)}: ${print.feetInches(leastInches)}, el terminal con ${print.feetInches(plainInches)} de baranda corriente, y el recorrido del terminal`,
  'run at least': ({ shortest, redirects, recommended }, print) =>
    [
      `al menos ${print.feetInches(shortest)}, lo más corto que se ensayó`,
      ...(redirects === null ? [] : [`de eso solo unos ${print.feetInches(redirects)} redirigen`]),
      ...(recommended === null ? [] : [`se recomiendan al menos ${print.feetInches(recommended)}`]),
    ].join('; '),
  'room at least': ({ length }, print) => `al menos ${print.feetInches(lengthIn(length, 'in'))}`,
  'working width': ({ inches, standard }, print) =>
    `al menos ${print.feetInches(inches)} desde la cara delantera de la baranda, según ${standard}`,
  'working width not stated': ({ spacing, standard }) =>
    `no se indica para separación ${spacingWord[spacing]} según ${standard}`,
  'slope or flatter': ({ run }) => `1V:${run}H o más tendido`,
  'foreslope or flatter': ({ run, never }) => `1V:${run}H o más tendido; 1V:${never}H no se acepta en ningún caso`,
  'ground at least to break': ({ inches, slope }, print) =>
    `al menos ${print.feetInches(inches)} hasta un quiebre a 1V:${slope}H`,
  'curb allowed': ({ flushInches, leastBehindFeet, highestInches, faceSlope, testDiffers, textsDiffer }, print) => {
    const flush = `a ras (hasta ${print.feetInches(flushInches)} detrás, como se ensayó el tramo de ${print.length(31, 'in')})`
    const behind = leastBehindFeet === null ? '' : `, o ${print.feetInches(leastBehindFeet * 12)} o más detrás`
    return [
      `baranda ${flush}${behind}`,
      `bordillo de a lo más ${print.feetInches(highestInches)} con ${curbFace(faceSlope)}`,
      ...(testDiffers
        ? [
            `el tramo de ${print.length(31, 'in')} pasó el nivel de ensayo 3 de NCHRP 350 con su baranda ${print.length(6, 'in')} detrás de un bordillo de ${print.length(6, 'in')}: el texto y el ensayo difieren`,
          ]
        : []),
      ...(textsDiffer
        ? [
            `NCHRP Report 537, página 93, halla riesgo de que un vehículo pase sobre una baranda a menos de ${print.written('7 m', 7, 'm')} detrás de un bordillo: los textos difieren`,
          ]
        : []),
    ].join('; ')
  },
  'no curb or one for the speed': () => 'ninguno, o uno con la altura, la cara y el lugar que la velocidad permite',
  'no curb near terminal': ({ fromFeet, highestInches }, print) =>
    `ninguno desde ${print.written(`${fromFeet} ft`, fromFeet, 'ft')} antes del poste 1 hasta el final del terminal; donde tenga que haberlo, de a lo más ${print.length(highestInches, 'in')} e inclinado, si el manual propio del terminal lo permite`,

  'crash tests and work': ({ tests, work, letting }, print) =>
    `${print.say(tests)}; ${work === null ? 'no se dice la clase de obra' : work === 'new' ? 'obra nueva' : 'obra existente'}, ${letting === null ? 'no se dice la adjudicación' : `adjudicada el ${letting}`}`,
  'chosen system': ({ id }) => id ?? 'sin sistema elegido',
  'adjoining rail': ({ height, splices }, print) =>
    [print.length(lengthIn(height, 'in'), 'in'), ...(splices === null ? [] : [splicesText(splices)])].join(', '),
  'length not laid out': () => 'tramo sin disponer',
  'site does not say': () => 'no se dice',
  'length there is': ({ length }, print) => print.feetInches(reachingInches(length)),
  'slope there is': ({ run }) => `1V:${run}H`,
  'curb there is': ({ curb }, print) => {
    if (curb === 'none') return 'ninguno'
    const { face, faceSlope, height, toRail } = curb
    const slope =
      face === 'vertical'
        ? ''
        : faceSlope === null
          ? ', no se dice la inclinación de su cara'
          : `, cara 1V:${faceSlope}H`
    return `baranda ${print.feetInches(reachingInches(toRail))} detrás de un bordillo ${face === 'vertical' ? 'vertical' : 'inclinado'} de ${print.feetInches(exceedingInches(height))}${slope}`
  },

  'recalled height transitions': ({ beforeTerminal }) =>
    `De memoria: fichas de estados sobre transiciones de altura${beforeTerminal ? '; ningún cambio de altura dentro de un terminal ni de su distancia de detención (respuesta pública de investigación 1114)' : ''}`,
  'answer on transitions': () => 'Midwest Roadside Safety Facility, respuesta pública 1277',
  'guide on curbs': () =>
    'AASHTO Roadside Design Guide, 2011, 5.6.2.1.1, según lo cita el estado que pregunta en la respuesta pública 1074 de Midwest Roadside Safety Facility; no se leyó NCHRP Report 1089, más nuevo y sobre tramos de 31 in',
  'study on curbs': () =>
    'NCHRP Report 537, 2005, página 94, que pide esto desde velocidades más bajas que la Roadside Design Guide',
  'recalled curbs before terminals': () =>
    'De memoria: manuales de estados; una guía pública para caminos militares pide a lo más 4 in delante de toda baranda a alta velocidad',
  'figure on grading': () =>
    'Figura de FHWA sobre la nivelación alrededor de terminales, citada en la respuesta pública 441 de Midwest Roadside Safety Facility',
  'reports on slope breaks': () =>
    'Midwest Roadside Safety Facility, informe sobre postes en quiebres de talud (325) y respuesta pública 1257',
}

const splicesText = (position: SplicePosition): string =>
  `empalmes ${position === 'post' ? 'en los postes' : 'a media distancia entre postes'}`
