/** The first reason why `xml` is not well formed, for the part of XML that an SVG of ours uses; null when it is. */
export function whyNotWellFormed(xml: string): string | null {
  const open: string[] = []
  let rest = xml.trim()
  let hasRoot = false
  while (rest !== '') {
    if (hasRoot && open.length === 0) return `something follows the root: ${rest.slice(0, 40)}`
    const tag = /^<(\/?)([a-z]+)((?:\s+[\w-]+="[^"<]*")*)\s*(\/?)>/i.exec(rest)
    const words = /^[^<]+/.exec(rest)
    if (tag) {
      const [all, closing, name = '', attributes = '', alone] = tag
      const names = [...attributes.matchAll(/([\w-]+)=/g)].map(([, one]) => one)
      if (new Set(names).size !== names.length) return `an attribute twice in ${all}`
      if (badReference.test(attributes)) return `a bare & in ${all}`
      if (closing && open.pop() !== name) return `</${name}> closes something else`
      if (!closing && !alone) open.push(name)
      hasRoot = true
      rest = rest.slice(all.length)
    } else if (words) {
      if (badReference.test(words[0]) || words[0].includes(']]>')) return `not character data: ${words[0].slice(0, 40)}`
      rest = rest.slice(words[0].length)
    } else return `not a tag: ${rest.slice(0, 40)}`
  }
  return open.length === 0 && hasRoot ? null : `not closed: ${open.join(' ')}`
}

const badReference = /&(?!(amp|lt|gt|quot|apos|#\d+|#x[\da-f]+);)/i
