/** The checks of a sheet for the pocket. */
export const pocketCard = {
  title: 'Pocket card',
  rail: (limits: string) => `Top of rail ${limits} above finish grade`,
  how: 'Print both sides, turned over the short edge; fold along the dashed lines.',
  notRecord: 'This card helps to look. It is no record: what was read is entered where the run is kept.',
  notConfirmedMeans: 'stands where a limit is from memory: nobody has checked it against a document.',
  covered: 'Before it is covered',
  inOrder: 'In walking order',
  oneOf: 'One of these, as the layout says:',
  right: 'Right.',
  wrong: 'Wrong:',
  everywhere: {
    post: 'posts',
    panel: 'panels',
    space: 'spaces between posts',
    splice: 'splices',
    unit: 'the end unit',
    run: 'the run',
  },
}
