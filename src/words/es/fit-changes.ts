import type { FitChange } from '../../core/fit/fit-saying.ts'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { lengthIn } from '../../core/units/exact-length.ts'
import type { Print, Printers } from '../print.ts'
import { exceedingInches } from '../reach.ts'
import { neededTestName } from './hardware.ts'

export const fitChanges: Printers<FitChange> = {
  'take tested hardware': ({ of, needed }) => `un ${sheetKind[of]} con ${neededTestName(needed)}`,
  'take joining parts': ({ systems, chosen }, print) =>
    `el sistema ${systems.join(' o ')}, o un extremo hecho para: ${print.say(chosen)}`,
  'meet adjoining run': ({ height, shiftingPanels }, print) =>
    [
      ...(height === null
        ? []
        : [
            `cambie la altura ${print.length(lengthIn(height.by, 'in'), 'in')} a lo largo de ${feet(height.overFeet[0], print)} a ${feet(height.overFeet[1], print)} de baranda, fuera del terminal y de su distancia de detención`,
          ]),
      ...(shiftingPanels === null
        ? []
        : [
            `un panel especial (${shiftingPanels.map((inches) => print.feetInches(inches)).join(' o ')}) desplaza los empalmes medio espacio entre postes`,
          ]),
    ].join('; '),
  'take crashworthy terminal': () => 'un terminal ensayado a choque en este extremo',
  'add rail before transition': ({ inches }, print) =>
    `${print.feetInches(inches)} más de baranda corriente entre el terminal y la transición`,
  'add rail': ({ inches }, print) => `${print.feetInches(inches)} más de baranda`,
  'space posts closer': ({ spacing, overInches, needsInches, half }, print) => {
    const closer = `separación ${spacingWord[spacing]} en ${print.feetInches(overInches)}: necesita ${print.feetInches(needsInches)}`
    return half === null
      ? closer
      : `${closer}, con ${print.feetInches(half.inches)} a mitad de separación antes${half.at === 'both ends' ? ' y después' : ''}`
  },
  'move rail away': ({ by, hazard }, print) =>
    `aleje la baranda ${print.feetInches(exceedingInches(by))} más de ${print.theirs(hazard)}`,
  'grade platform': ({ run, orTangent }) =>
    `nivele la plataforma a 1V:${run}H${orTangent ? `, o tome ${tangent}` : ''}`,
  'widen platform behind post 1': ({ length, orTangent }, print) =>
    `${print.feetInches(lengthIn(length, 'in'))} de plataforma detrás del poste 1${orTangent ? `, o ${tangent}` : ''}`,
  'clear ground': ({ behind, length }, print) =>
    `despeje ${print.feetInches(lengthIn(length, 'in'))} detrás ${behind === 'end' ? 'del extremo' : 'de la baranda'}, o mueva el extremo aguas arriba`,
  'flatten foreslope': ({ run }) => `tienda el talud junto a la plataforma a 1V:${run}H`,
  'take longer posts at break': ({ feet: lengths, halfSpacingFeet }, print) =>
    `${longerPosts(lengths, print)} en el quiebre, o postes de ${feet(halfSpacingFeet, print)} con la mitad de separación`,
  'widen ground to break': ({ inches, feet: lengths, beforeBreakFeet }, print) =>
    `ensanche el terreno detrás de los postes a ${print.feetInches(inches)}, o ${longerPosts(lengths, print)}, ${feet(beforeBreakFeet, print)} antes del quiebre`,
  'change curb': ({ highestInches, railFlush, face }, print) =>
    [
      ...(highestInches === null ? [] : [`un bordillo de ${print.feetInches(highestInches)}`]),
      ...(railFlush ? ['la baranda a ras del bordillo'] : []),
      ...(face === null ? [] : [curbFace(face.slope)]),
    ].join(' y '),
  'take curb away': () => 'ningún bordillo delante del terminal',
}

/** `una cara inclinada de 1V:3H o más tendida` */
export const curbFace = (slope: number | null): string =>
  slope === null ? 'una cara inclinada' : `una cara inclinada de 1V:${slope}H o más tendida`

export const spacingWord = { full: 'entera', half: 'mitad', quarter: 'cuarta parte' } as const

/** All masculine, so that an article fits any. */
export const sheetKind: Readonly<Record<HardwareSheet['kind'], string>> = {
  longitudinal: 'sistema',
  terminal: 'terminal',
  'trailing anchor': 'anclaje de salida',
  'buried end': 'extremo enterrado',
  'bridge end': 'extremo de puente',
}

const tangent = 'un terminal tangente, que necesita menos espacio'

const feet = (value: number, print: Print): string => print.written(`${value} ft`, value, 'ft')

/** `postes de 8 ft o 9 ft` */
const longerPosts = (lengths: readonly number[], print: Print): string =>
  `postes de ${lengths.map((one) => feet(one, print)).join(' o ')}`
