import type { OmissionRule, SplicePosition } from '../../core/hardware/hardware-sheet.ts'
import type { SheetText } from '../../core/hardware/sheet-text.ts'
import type { LayoutSaying } from '../../core/layout/layout-saying.ts'
import type { Print, Printers } from '../print.ts'
import { theirNames } from '../their-names.ts'

export const layout: Printers<LayoutSaying> = {
  'as counted': ({ known }) =>
    `como se contó: estas son las piezas existentes, y ninguna disposición válida las tiene${known === 'posts placed' ? '' : '; no se midió a qué distancia están los postes'}`,
  'end not known': ({ end, because }) =>
    because === 'no sheet fits'
      ? `ninguna ficha corresponde al ${endWord[end]} extremo`
      : `nadie miró más allá del ${endWord[end]} extremo de lo contado`,
  'goes on from standing splice': ({ end }) => `el ${endWord[end]} extremo sigue desde el empalme existente`,
  'sheet joins run': ({ sheet, adapterInches }, print) =>
    adapterInches === null
      ? `${print.say(sheet)}: se une al tramo sin panel adaptador`
      : `${print.say(sheet)}: se une al tramo con un panel de ${print.feetInches(adapterInches)}`,
  'need covered': ({ atBegin, atEnd }, print) => {
    const spare = [
      ...(atBegin === null ? [] : [`${print.feetInches(atBegin)} en su principio`]),
      ...(atEnd === null ? [] : [`${print.feetInches(atEnd)} en su final`]),
    ]
    return `la baranda que cuenta cubre la necesidad${spare.length > 0 ? ` y sobran ${spare.join(' y ')}` : ''}`
  },
  'post left out': ({ alongInches, obstructions, rule }, print) =>
    `se omite el poste a ${print.feetInches(alongInches)} por ${theirNames(obstructions, print)}, según la regla de la ficha para un hueco ${gapWords[rule]}`,
  'gap as without curb': ({ obstructions, doubledInches }, print) =>
    `${theirNames(obstructions, print)}: dispuesto como sin bordillo, el tramo no dice si hay uno delante de la baranda; junto a un bordillo ${
      doubledInches === null
        ? 'la ficha no permite este hueco'
        : `hay que doblar ${print.feetInches(doubledInches)} de baranda`
    }`,
  'posts keep clear': ({ halfPostInches, clearanceInches, isStated }, print) =>
    `el centro de un poste guarda ${print.feetInches(halfPostInches + clearanceInches)} hasta lo que estorba: medio poste, ${print.feetInches(halfPostInches)} (práctica común), y una separación de ${print.feetInches(clearanceInches)}${isStated ? ', como lo dice el tramo' : ' (de memoria, SIN CONFIRMAR: el tramo no dice ninguna)'}`,
  'post moved along rail': ({ post }) => `el poste ${post} está movido a lo largo de la baranda`,
  'post of special kind': ({ post, of }, print) => `el poste ${post} es un ${print.say(of)}`,
  'post that stands': () => 'poste existente',
  'pieces of run': ({ changedPosts, oddPanels, railInches, pieces }, print) =>
    `${count(changedPosts, 'poste', 'postes')} que se omiten, mueven o cambian; ${count(oddPanels, 'panel', 'paneles')} de longitud no estándar; ${print.feetInches(railInches)} de baranda en ${count(pieces, 'pieza', 'piezas')}`,

  'splice position': ({ panel, unit, at, post, wanted }, print) => {
    const joined = panel === null ? 'unido como está' : `unido con un panel de ${print.feetInches(panel)}`
    const where = at === 'post' ? `en el poste ${post}` : `a media distancia entre los postes ${post} y ${post + 1}`
    return `${print.say(unit)} ${joined}: el empalme caería ${where}, y los de este sistema están ${positionWords[wanted]}`
  },
  'panel not of this unit': ({ panel, unit }, print) =>
    `un panel de ${print.feetInches(panel)} no es de los que la ficha permite antes del tramo: ${print.say(unit)}`,
  'unit post obstructed': ({ post, unit, obstructions }, print) =>
    `el poste ${post} de: ${unitText(unit, print)}, quedaría en ${theirNames(obstructions, print)}`,
  'too many posts obstructed': ({ obstructions, posts, firstPost, most }, print) =>
    `${theirNames(obstructions, print)}: ${count(posts, 'poste', 'postes')} desde el poste ${firstPost} no ${posts === 1 ? 'puede' : 'pueden'} estar, y la ficha deja omitir o mover ${most === 0 ? 'ninguno' : `a lo más ${most} seguidos`}`,
  'special posts do not fit': ({ obstructions, rule, each }, print) =>
    `${theirNames(obstructions, print)}: el hueco ${gapWords[rule]} necesita ${each} postes especiales a cada lado, y no caben junto a la unidad de extremo, otro hueco o postes que ya están`,
  'too near the end unit': ({ obstructions, rule, least, have }, print) =>
    `${theirNames(obstructions, print)}: el hueco ${gapWords[rule]} necesita ${print.feetInches(least)} hasta la unidad de extremo, y solo hay ${print.feetInches(have)}`,
  'gaps too near': ({ first, second, have, least }, print) =>
    `${theirNames(first, print)} y ${theirNames(second, print)}: ${print.feetInches(have)} entre los huecos, hacen falta al menos ${print.feetInches(least)}`,
  'not stated at a curb': ({ obstructions, rule }, print) =>
    `${theirNames(obstructions, print)}: la ficha no dice que se puedan omitir postes por su regla para un hueco ${gapWords[rule]} donde hay un bordillo delante de la baranda`,
  'too many posts moved': ({ obstructions, most }, print) =>
    `${theirNames(obstructions, print)}: la ficha deja mover a lo más ${count(most, 'poste', 'postes')} de un tramo`,
  'reduced part in unit': ({ spacing, unit }, print) =>
    `la separación reducida (${spacingWord[spacing]}) caería dentro de: ${unitText(unit, print)}, cuyos postes están como en el ensayo`,
  'post at reduced spacing obstructed': ({ obstructions, spacing }, print) =>
    `${theirNames(obstructions, print)}: no se puede omitir ningún poste donde rige la separación reducida (${spacingWord[spacing]})`,
  'doubled part in unit': ({ unit }, print) =>
    `la baranda doble pedida entraría en: ${unitText(unit, print)}, cuyos paneles están como en el ensayo`,
  'no panels fit': ({ lengths, between }, print) =>
    `ningún orden de paneles de ${lengths.map((one) => print.feetInches(one)).join(', ')} llena ${print.feetInches(between)} con cada empalme en su sitio`,
  'splice on omitted post': ({ obstructions }, print) =>
    `${theirNames(obstructions, print)}: un empalme caería en un poste que se omite o se mueve`,
  'ends do not meet': ({ between, nearestShorter, nearestLonger }, print) => {
    const nearest = [nearestShorter, nearestLonger].flatMap((one) => (one === null ? [] : [print.feetInches(one)]))
    const named = nearest.length === 1 ? 'la más cercana' : 'las más cercanas'
    return `los extremos fijos están a ${print.feetInches(between)} uno de otro, y ningún tramo válido tiene esa longitud${nearest.length === 0 ? '' : ` (${named}: ${nearest.join(' y ')})`}`
  },
  'does not cover': ({ end, shortBy }, print) =>
    `el ${endWord[end]} extremo está ${print.feetInches(shortBy)} demasiado cerca: la baranda no contaría para toda la necesidad`,
  'hung panel differs': ({ panel, hung, unit, expected }, print) =>
    `el panel ${panel} colgado mide ${print.feetInches(hung)}; ahí corresponde uno de ${print.feetInches(expected)}: ${unitText(unit, print)}`,
  'hung splice': ({ panel }) => `el panel ${panel} colgado termina donde no puede haber un empalme`,
  'hung length': ({ panel, hung, endOnly }, print) =>
    `el panel ${panel} colgado mide ${print.feetInches(hung)}, que ${endOnly ? 'solo puede ser el primero o el último del tramo' : 'no es de este sistema'}`,
  'hung too long': ({ by }, print) =>
    `lo que ya está colgado entra ${print.feetInches(by)} en el segundo extremo, o lo sobrepasa`,
  'stands elsewhere': ({ by }, print) =>
    `el poste 1, tal como está, deja el primer extremo a ${print.feetInches(by)} de donde está fijado`,
  'stands otherwise': ({ state, atInches }, print) =>
    state === 'moved'
      ? `a ${print.feetInches(atInches)} del origen hay un poste movido, y la ficha no tiene ninguno ahí: un poste solo se mueve para librar algo, y solo hasta donde dice la ficha`
      : `a ${print.feetInches(atInches)} del origen hay un poste especial, y esta disposición no tiene ninguno ahí`,
  'not in stock': ({ panel }, print) => `no hay panel de ${print.feetInches(panel)} en existencia`,
  'posts do not meet': ({ remainder, spacing }, print) =>
    `los postes de los dos extremos no coinciden: falta ${print.feetInches(remainder)} de un espacio de ${print.feetInches(spacing)}`,
  'nested rail in unit': ({ obstructions, nested, unit }, print) =>
    `${theirNames(obstructions, print)}: los ${print.feetInches(nested)} de baranda doble alrededor del hueco entrarían en: ${unitText(unit, print)}`,
}

const count = (n: number, one: string, several: string): string => `${n} ${n === 1 ? one : several}`

const endWord = { first: 'primer', second: 'segundo' } as const
const spacingWord = { half: 'mitad', quarter: 'cuarta parte' } as const

const positionWords: Readonly<Record<SplicePosition, string>> = {
  post: 'en los postes',
  midspan: 'a media distancia entre postes',
}

const gapWords: Readonly<Record<OmissionRule['kind'], string>> = {
  single: 'de un poste',
  'long span': 'de vano largo',
  'nested span': 'de vano con baranda doble',
}

const unitText = (unit: SheetText | null, print: Print): string => (unit === null ? 'tramo existente' : print.say(unit))
