/** Quantities, and the list of what is delivered. What stands in braces is put in where the page is set. */
export const quantities = {
  title: 'Quantities',
  boundaries: (begins: string, ends: string) =>
    `The run begins ${begins} and ends ${ends}, measured along the face of rail.`,
  rounding: (isPanel: boolean, step: string) =>
    isPanel ? `Paid to the nearest panel of ${step}, halves upward.` : `Paid to the nearest ${step}, halves upward.`,
  sections: {
    length: 'Length',
    ends: 'Ends',
    posts: 'Posts and blocks',
    panels: 'Panels',
    bolts: 'Bolts',
    spares: 'Spares',
  },
  paid: (length: string) => `${length} to be paid`,
  each: '{amount} each',
  item: 'Item',
  amount: 'Amount',
  pieces: 'Pieces',
  source: 'Source, note',
  materials: {
    title: 'Material list',
    how: 'Write down what is rolled, stamped or tagged on each piece before it is hung: afterwards it cannot be read. Material that stands or hangs already is not listed.',
    rail: 'Rail',
    none: 'None to deliver.',
    where: 'Where',
    item: 'Item',
    count: 'Pcs',
    heat: 'Heat mark',
    coating: 'Coating mark',
    checkedBy: 'Checked by',
    bundles: 'Ends, posts, blocks and bolts',
    bundle: 'Mark or tag of the bundle',
    receivedBy: 'Received by',
    signature: 'Signature',
    date: 'Date',
  },
}
