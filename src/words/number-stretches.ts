/** The numbers in order, each once, in stretches of those that follow each other. */
function numberStretches(numbers: readonly number[]): readonly { readonly from: number; readonly to: number }[] {
  const stretches: { from: number; to: number }[] = []
  for (const number of [...new Set(numbers)].sort((a, b) => a - b)) {
    const last = stretches.at(-1)
    if (last !== undefined && number === last.to + 1) last.to = number
    else stretches.push({ from: number, to: number })
  }
  return stretches
}

/** The stretches as `3 to 18`, of two numbers as both. @param to  the word between */
export const stretchTexts = (numbers: readonly number[], to: string): readonly string[] =>
  numberStretches(numbers).flatMap(({ from, to: last }) =>
    last - from > 1 ? [`${from} ${to} ${last}`] : from === last ? [`${from}`] : [`${from}`, `${last}`],
  )
