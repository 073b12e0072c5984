import type { HardwareSaying } from '../../core/hardware/hardware-saying.ts'
import type { AgreementCategory, Criteria } from '../../core/hardware/hardware-sheet.ts'
import type { NeededTest, NotSaid } from '../../core/hardware/tested-criteria.ts'
import type { Printers } from '../print.ts'
import { withValues } from '../text-in.ts'
import { sourceWords } from './source-words.ts'

export const hardware: Printers<HardwareSaying> = {
  source: ({ title, edition }, print) =>
    edition === null ? print.say(title) : `${print.say(title)}, ${print.say(edition)}`,
  title: ({ of }, print) => {
    const own = typeof of === 'string' ? of : of.own
    const inSheet = typeof of === 'string' ? undefined : of.others.es
    return print.theirs(
      typeof of === 'string' ? (sourceWords[own] ?? own) : withValues(inSheet ?? sourceWords[own] ?? own, print),
    )
  },
  'crash tests': ({ tests }) =>
    tests.length === 0 ? 'no se indica ningún ensayo de choque' : tests.map(testText).join('; '),
  'needed crash test': ({ at: { speed, work, letting }, category, lastLetting, ...needed }) => {
    const level = `${neededTestName(needed)}${speed === null ? '' : `, para ${speed.value} ${speed.unit}`}`
    if (work === 'standing') return `${level}; obra existente: la fecha de adjudicación no aplica`
    const date = `${lastLetting} (${categoryWords[category]}); ${agreementConditions}`
    return needed.mash === null
      ? `${level}; MASH 2016 o posterior para obra nueva adjudicada después del ${date}`
      : `${level}; obra nueva adjudicada el ${letting}; MASH 2016 o posterior después del ${date}`
  },
  'crash test found': ({ answer, forAny, tests, needed }, print) => {
    const testedTo = `ensayado según ${print.say({ kind: 'crash tests', tests })}`
    const neededIs = `hace falta ${print.say(needed)}`
    switch (answer.verdict) {
      case 'meets': {
        const by = `ensayado según ${testText(answer.by)}`
        return forAny ? `${by}, que basta para toda obra y velocidad` : `${by}; ${neededIs}`
      }
      case 'fails':
        return `ningún ensayo por sí solo basta: ${testedTo}; ${neededIs}`
      case 'unread':
        return [
          `no se dice: ${answer.notSaid.map((one) => notSaidWords[one]).join('; ')}`,
          ...(tests.length === 0 ? [] : [testedTo]),
          neededIs,
        ].join('; ')
    }
  },
  'needed end': ({ end }) =>
    end === 'approach'
      ? 'ensayado a choque: el tránsito contiguo lo encuentra primero'
      : 'ensayado a choque donde el tránsito contrario puede alcanzarlo',
  'hardware at height': ({ name, limits }, print) =>
    `${print.say(name)} (parte superior de la baranda: ${print.say(limits)})`,
  'exposed end': ({ crashworthy, of, end, opposingReaches }) => {
    const reached =
      end === 'approach'
        ? 'el tránsito contiguo lo encuentra primero'
        : of === 'bridge end'
          ? 'el tránsito pasa a su lado'
          : opposingReaches === null
            ? 'no se dice si el tránsito contrario puede alcanzarlo'
            : opposingReaches
              ? 'el tránsito contrario puede alcanzarlo'
              : 'el tránsito contrario no puede alcanzarlo'
    return `${crashworthy ? 'ensayado a choque' : 'no ensayado a choque'}; ${reached}`
  },
}

/** `MASH 2016, nivel de ensayo 3` */
const testText = ({ standard, edition, testLevel }: Criteria): string =>
  `${standard === 'MASH' ? `MASH ${edition}` : standard}, nivel de ensayo ${testLevel}`

/** `un ensayo según MASH 2016 o posterior a nivel 3 o mayor` */
export const neededTestName = ({ mash, testLevel }: NeededTest): string =>
  `un ensayo ${mash === true ? 'según MASH 2016 o posterior ' : ''}${testLevel === null ? 'al nivel para la velocidad de la vía' : `a nivel ${testLevel} o mayor`}`

/** The conditions under which the agreement's date binds; its source stands with the English words. */
const agreementConditions =
  'la fecha obliga a los contratos del sistema nacional de carreteras; hay excepciones por memorando; la fecha propia de un estado puede ser otra'

const categoryWords: Readonly<Record<AgreementCategory, string>> = {
  'W-beam barrier': 'baranda de doble onda',
  'W-beam terminal': 'terminal de baranda de doble onda',
  transition: 'transición',
  'other longitudinal barrier': 'otra barrera longitudinal',
}

const notSaidWords: Readonly<Record<NotSaid, string>> = {
  test: 'un ensayo de choque en la ficha',
  work: 'si la obra es nueva',
  letting: 'cuándo se adjudicó',
  speed: 'la velocidad de la vía',
}
