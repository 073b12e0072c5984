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
  'end of rail': 'What does the rail end in?',
  'line of rail': 'Does the end leave the line of the run?',
  splices: 'Where do two panels meet, past the end?',
  'rail height': 'Which height is the top of the rail nearest to?',
  'block at post 2': 'Is there a block between rail and post 2?',
  'block at post 1': 'Is there a block between rail and post 1?',
  cable: 'What holds the anchor cable?',
  'foot of post 1': 'What lets post 1 break away?',
  'slots in panel 1': 'Is there a row of slots along the first panel?',
  'beam of panel 1': 'How many waves has the rail at the very end?',
  'material of post 1': 'What is the post of?',
  'first space': 'How far is it from the first post to the second?',
  'length of panel 1': 'How long is the first panel?',
}

const looks: Readonly<Record<KeyTrait, string>> = {
  'end of rail': 'Stand where the rail ends and look at its tip.',
  'line of rail': 'Sight along the straight rail toward the end. The 2 ft are our judgement, of no document.',
  splices: 'Look for the eight bolts of a splice, well past the end: the first two may lie otherwise.',
  'rail height': 'Measure from the ground under the face to the top of the rail, where the ground is sound.',
  'block at post 2': 'Post 1 is the outermost. Look between the second post and the rail.',
  'block at post 1': 'Post 1 is the outermost. Look between it and the rail.',
  cable: 'Look for a steel cable from the foot of post 1 up to the back of the rail.',
  'foot of post 1': 'Look at the outermost post where it comes out of the ground.',
  'slots in panel 1': 'Look at the middle of the outermost panel, from its face.',
  'beam of panel 1': 'Look at the rail from its end.',
  'material of post 1': 'Look at the outermost post.',
  'first space': 'Measure from the middle of one to the middle of the other.',
  'length of panel 1': 'From splice to splice, or count the spaces between posts that it spans.',
}

const yesNo = (is: boolean): string => (is ? 'Yes' : 'No')

const answers: { readonly [T in KeyTrait]: (is: KeyValues[T], print: Print) => string } = {
  'end of rail': (is) => ends[is],
  'line of rail': (is) => (is === 'in line' ? 'No, or less than 2 ft' : 'Yes, by 2 ft or more'),
  splices: (is) => (is === 'post' ? 'At a post' : 'Midway between posts'),
  'rail height': (is, print) => print.length(is, 'in'),
  'block at post 2': yesNo,
  'block at post 1': yesNo,
  cable: (is) => cables[is],
  'foot of post 1': (is) => feet[is],
  'slots in panel 1': yesNo,
  'beam of panel 1': (is) => beams[is],
  'material of post 1': (is) => (is === 'steel' ? 'Steel' : 'Wood'),
  'first space': (is, print) => print.feetInches(is),
  'length of panel 1': (is, print) => print.feetInches(is),
}

const ends: Readonly<Record<KeyValues['end of rail'], string>> = {
  terminal: 'A head on the rail, made to be struck',
  'trailing anchor': 'A plain end at an anchored post',
  'buried end': 'It goes into a slope',
  'bridge end': 'A bridge or a wall',
}

const cables: Readonly<Record<KeyValues['cable'], string>> = {
  'bearing plate': 'A plate before post 1',
  cable: 'Something else',
  'no cable': 'There is no cable',
}

const feet: Readonly<Record<KeyValues['foot of post 1'], string>> = {
  hinge: 'A bolted hinge near the ground',
  other: 'Holes, a notch or slots near the ground',
  none: 'Nothing: it is a whole post',
}

const beams: Readonly<Record<KeyValues['beam of panel 1'], string>> = {
  W: 'Two',
  thrie: 'Three',
  'W to thrie': 'From two to three',
}
