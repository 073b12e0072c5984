import type { KeySaying } from '../../core/hardware/key-saying.ts'
import type { KeyTrait, KeyValues } from '../../core/hardware/key-traits.ts'
import type { Print, Printers } from '../print.ts'

/** The key that finds the hardware: what it asks, where to look, what can be answered. */
export const key: Printers<KeySaying> = {
  'key question': ({ of }) => questions[of],
  'where to look': ({ of }) => looks[of],
  'key answer': ({ of, is }, print) => (answers[of] as (is: KeyValues[KeyTrait], print: Print) => string)(is, print),
}

const questions: Readonly<Record<KeyTrait, string>> = {
  'end of rail': '¿En qué termina la baranda?',
  'line of rail': '¿El extremo se aparta de la línea del tramo?',
  splices: '¿Dónde se unen dos paneles, pasado el extremo?',
  'rail height': '¿De qué altura está más cerca la parte superior de la baranda?',
  'block at post 2': '¿Hay un bloque entre la baranda y el poste 2?',
  'block at post 1': '¿Hay un bloque entre la baranda y el poste 1?',
  cable: '¿Qué sujeta el cable de anclaje?',
  'foot of post 1': '¿Qué deja que el poste 1 se rompa?',
  'slots in panel 1': '¿Hay una fila de ranuras a lo largo del primer panel?',
  'beam of panel 1': '¿Cuántas ondas tiene la baranda en la misma punta?',
  'material of post 1': '¿De qué es el poste?',
  'first space': '¿Cuánto hay del primer poste al segundo?',
  'length of panel 1': '¿Cuánto mide el primer panel?',
}

const looks: Readonly<Record<KeyTrait, string>> = {
  'end of rail': 'Póngase donde termina la baranda y mire su punta.',
  'line of rail': 'Mire a lo largo de la baranda recta hacia el extremo. Los 2 ft son criterio nuestro, sin documento.',
  splices:
    'Busque los ocho tornillos de un empalme, bien pasado el extremo: los dos primeros pueden estar de otro modo.',
  'rail height': 'Mida del suelo bajo la cara a la parte superior de la baranda, donde el suelo esté bien.',
  'block at post 2': 'El poste 1 es el de más afuera. Mire entre el segundo poste y la baranda.',
  'block at post 1': 'El poste 1 es el de más afuera. Mire entre él y la baranda.',
  cable: 'Busque un cable de acero del pie del poste 1 a la espalda de la baranda.',
  'foot of post 1': 'Mire el poste de más afuera donde sale del suelo.',
  'slots in panel 1': 'Mire el centro del panel de más afuera, por su cara.',
  'beam of panel 1': 'Mire la baranda desde su punta.',
  'material of post 1': 'Mire el poste de más afuera.',
  'first space': 'Mida del centro de uno al centro del otro.',
  'length of panel 1': 'De empalme a empalme, o cuente los espacios entre postes que abarca.',
}

const yesNo = (is: boolean): string => (is ? 'Sí' : 'No')

const answers: { readonly [T in KeyTrait]: (is: KeyValues[T], print: Print) => string } = {
  'end of rail': (is) => ends[is],
  'line of rail': (is) => (is === 'in line' ? 'No, o menos de 2 ft' : 'Sí, 2 ft o más'),
  splices: (is) => (is === 'post' ? 'En un poste' : 'A media distancia entre postes'),
  'rail height': (is, print) => print.length(is, 'in'),
  'block at post 2': yesNo,
  'block at post 1': yesNo,
  cable: (is) => cables[is],
  'foot of post 1': (is) => feet[is],
  'slots in panel 1': yesNo,
  'beam of panel 1': (is) => beams[is],
  'material of post 1': (is) => (is === 'steel' ? 'Acero' : 'Madera'),
  'first space': (is, print) => print.feetInches(is),
  'length of panel 1': (is, print) => print.feetInches(is),
}

const ends: Readonly<Record<KeyValues['end of rail'], string>> = {
  terminal: 'Una cabeza en la baranda, hecha para el choque',
  'trailing anchor': 'Una punta simple en un poste anclado',
  'buried end': 'Entra en un talud',
  'bridge end': 'Un puente o un muro',
}

const cables: Readonly<Record<KeyValues['cable'], string>> = {
  'bearing plate': 'Una placa ante el poste 1',
  cable: 'Otra cosa',
  'no cable': 'No hay cable',
}

const feet: Readonly<Record<KeyValues['foot of post 1'], string>> = {
  hinge: 'Una bisagra atornillada cerca del suelo',
  other: 'Agujeros, una muesca o ranuras cerca del suelo',
  none: 'Nada: es un poste entero',
}

const beams: Readonly<Record<KeyValues['beam of panel 1'], string>> = {
  W: 'Dos',
  thrie: 'Tres',
  'W to thrie': 'De dos a tres',
}
