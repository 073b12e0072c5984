/** The stretches of a text in the pseudo-language that were not said: what stands in no brackets. */
export function unsaidIn(text: string): readonly string[] {
  // A text that was cut short has lost the bracket at its end.
  const unmarked = withoutInner(withoutInner(text, /‹[^‹›]*›/g), /⟦[^⟦⟧]*(?:⟧|…)/g).split('\0')
  return unmarked.map(bare).filter((one) => /\p{L}{2,}/u.test(one.replaceAll(measures, '')))
}

/** The text with a gap for all that fits, the innermost first. */
function withoutInner(text: string, expression: RegExp): string {
  const rest = text.replaceAll(expression, '\0')
  return rest === text ? text : withoutInner(rest, expression)
}

const bare = (text: string): string => text.replaceAll('\0', ' ').replace(/\s+/g, ' ').trim()

/** Units, stations, dates, hashes and ids are the same in every language. */
const measures =
  /\b(?:mi\/h|km\/h|in|ft|mm|m|km|lbf·ft|N·m|lbf|kN)\b|\b\d+V:[\d.]+H\b|\d[\d:+./T-]*Z?\b|\bUTC\b|\b[0-9a-f]{8,}\b|\b[a-z0-9]+(?:-[a-z0-9]+)*\/[a-z0-9-]+\b|\b[a-z]+(?:-[a-z0-9]+)+\b/g

/** Texts one after the other; where one that was said is broken into lines, these are one again. */
export function rejoined(texts: readonly string[]): readonly string[] {
  const whole: string[] = []
  let depth = 0
  for (const text of texts) {
    if (depth > 0) whole[whole.length - 1] += ` ${text}`
    else whole.push(text)
    depth += depthOf(text)
  }
  return whole
}

const depthOf = (text: string): number =>
  (text.match(/[⟦‹]/g) ?? []).length - (text.match(/[⟧›]/g) ?? []).length - (text.endsWith('…') ? 1 : 0)

/** What of an output's texts is left unsaid, each once, numbers aside; after a line that says how many there are. */
export function leftUnsaid(output: string, found: readonly string[]): readonly string[] {
  const alike = [...new Set(found.map((text) => text.replace(/\d+/g, '#')))]
  return alike.length === 0 ? [] : [`${output}: ${alike.length} texts are not said`, ...alike]
}
