import type { Mutant } from './make-mutants.ts'

/** What the planted text calls: whether a mutant is the one in force. */
export const switchName = '$isMutant'

/**
 * The text of a module with all its mutants in it, each behind a switch, so that the module is read and compiled once
 * for all of them. With no mutant in force it does what the original does.
 *
 * @param mutants  of this module, those that stand first in the text before those inside them
 */
export function plantMutants(text: string, mutants: readonly Mutant[]): string {
  return `const ${switchName} = globalThis.${switchName}; ${plantBetween(text, 0, text.length, mutants)}`
}

/** The mutants lie within `start` and `end`. */
function plantBetween(text: string, start: number, end: number, mutants: readonly Mutant[]): string {
  let planted = ''
  let done = start
  for (let at = 0; at < mutants.length; ) {
    const first = mutants[at]!
    const same = mutants.slice(at).filter((one) => one.start === first.start && one.end === first.end)
    const inside = mutants.slice(at + same.length).filter((one) => one.start < first.end)
    const original = plantBetween(text, first.start, first.end, inside)
    planted += text.slice(done, first.start) + switched(original, same)
    done = first.end
    at += same.length + inside.length
  }
  return planted + text.slice(done, end)
}

function switched(original: string, mutants: readonly Mutant[]): string {
  if (mutants[0]!.node === 'statement') {
    const cases = mutants.map((one) => `if (${switchName}(${one.id})) { ${one.replacement} } else`)
    return `${cases.join(' ')} { ${original} }`
  }
  const cases = mutants.map((one) => `${switchName}(${one.id}) ? (${one.replacement}) :`)
  return `(${cases.join(' ')} (${original}))`
}
