/** What is said in a scene, in English. */
export const sceneEn = {
  title: (run: string) => `${run} in three dimensions`,
  how: 'Drag to turn, pinch or roll to come nearer, touch a part to go to its place. Keys: arrows turn, + and - come nearer and go back, Page Up and Page Down go from place to place.',
  places: 'Places of the run',
  previous: 'Place before',
  next: 'Next place',
  from: 'Seen from',
  fromRoad: 'Road',
  behind: 'Behind',
  size: 'Heights and offsets',
  times: (factor: number) => (factor === 1 ? 'True' : `× ${factor}`),
  exaggerated: (factor: number) =>
    `Heights and offsets stand ${factor} times as far from what was asked as they were read.`,
  truly: 'As read, in true size; what nobody read stands as it was asked for.',
  unknown: {
    flare: 'The sheet of an end states no offset for its flare: the rail is drawn straight there.',
    'places of posts': 'The posts were only counted: they are drawn at their spacing, where each stands is not known.',
  },
  practice: 'Practice: the run as it stands, faults and all. Its colours are those of your own readings.',
  signs: 'A shape that no sheet states is drawn plainly, as a sign; road and ground are signs too.',
  measure: 'Measure',
  tools: { tape: 'Tape', level: 'Level', 'string line': 'String line' },
  touch: {
    tape: (left: number): string => (left === 2 ? 'Touch two points.' : 'Touch the second point.'),
    level: (_left: number): string => 'Touch a point: its height above finish grade is read.',
    'string line': (left: number): string =>
      left === 3
        ? 'Touch both ends of the string, then a third point.'
        : left === 2
          ? 'Touch the other end of the string.'
          : 'Touch the point whose offset is wanted.',
  },
  measured: (length: string, doubt: string) => `${length} ± ${doubt}`,
  save: 'Save as glTF file',
  toRequirement: 'To its requirements',
  none: 'This device or browser draws no scenes. The strip above and the figures of the walk show the same places.',
  lost: 'The device has taken the drawing away for a while. The list goes on; the scene comes back by itself.',
}

export type SceneWords = typeof sceneEn
