import type { Page } from '@playwright/test'

/**
 * What a gloved thumb would miss or an eye could not read on the screen as it is: main actions under 56 pixels, what is
 * pressed under 44, less than 8 between what stands in the row of a main action, and texts that are cut or lie over
 * one another. A link within a text is as high as its line.
 */
export const wrongOnScreen = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const wrong: string[] = []
    const named = (one: Element): string =>
      `${one.tagName.toLowerCase()}.${one.getAttribute('class') ?? ''} "${(one.getAttribute('aria-label') ?? one.textContent ?? '').trim().slice(0, 40)}"`
    const isShown = (one: Element): boolean => {
      const { width, height, right } = one.getBoundingClientRect()
      // What only who hears the page is told has a box of a pixel, and what leads past the head lies beside the page.
      return width > 2 && height > 2 && right > 0 && one.checkVisibility({ contentVisibilityAuto: true })
    }
    const isOnlyHeard = (one: Element): boolean => {
      for (let at: Element | null = one; at !== null; at = at.parentElement)
        if (getComputedStyle(at).clipPath !== 'none') return true
      return one.closest('.skip') !== null
    }
    const isInText = (one: Element): boolean =>
      getComputedStyle(one).display === 'inline' &&
      [...(one.parentElement?.childNodes ?? [])].some((node) => node !== one && node.textContent?.trim() !== '')

    const main = '.button.main, .door'
    const pressable = 'a[href], button, summary, select, textarea, input, [role="button"]'
    /** Where a finger hits it: a field that is ticked has its label. */
    const hit = (one: Element): DOMRect =>
      (one.matches('input') ? (one.closest('label') ?? one) : one).getBoundingClientRect()
    // The places of a drawing are reached in the list as well.
    const pressed = [...document.querySelectorAll(pressable)].filter(
      (one) => isShown(one) && one.closest('svg') === null && !isInText(one),
    )
    for (const one of pressed) {
      const { width, height } = hit(one)
      if (isOnlyHeard(one)) continue
      if (one.matches(main) && height < 56) wrong.push(`${height} px high: ${named(one)}`)
      else if (Math.min(width, height) < 43.5) wrong.push(`${width} x ${height} px: ${named(one)}`)
    }
    for (const one of pressed.filter((one) => one.matches(main)))
      for (const beside of pressed.filter((other) => other !== one && other.parentElement === one.parentElement)) {
        const [a, b] = [hit(one), hit(beside)]
        const across = Math.max(a.left, b.left) - Math.min(a.right, b.right)
        const down = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom)
        if (Math.max(across, down) < 7.5) wrong.push(`nearer than 8 px: ${named(one)} and ${named(beside)}`)
      }

    /** What stays where it is while the rest is scrolled, which lies over other parts as it is meant to. */
    const layerOf = (one: Element | null): Element | null => {
      for (let at = one; at !== null; at = at.parentElement)
        if (['fixed', 'sticky'].includes(getComputedStyle(at).position)) return at
      return null
    }
    const lines: { readonly node: Node; readonly layer: Element | null; readonly box: DOMRect }[] = []
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement!
      if (node.textContent?.trim() === '' || parent.closest('select, svg, script, style, noscript') !== null) continue
      if (!isShown(parent) || isOnlyHeard(parent)) continue
      const layer = layerOf(parent)
      const range = document.createRange()
      range.selectNodeContents(node)
      for (const box of range.getClientRects()) if (box.width > 2) lines.push({ node, layer, box })
      const frame = parent.closest('button, .button, label, td, .filter, .key')?.getBoundingClientRect()
      const reach = range.getBoundingClientRect()
      if (frame && frame.width > 2 && (reach.right > frame.right + 1 || reach.bottom > frame.bottom + 1))
        wrong.push(`cut or out of its frame: ${named(parent)}`)
    }
    lines.sort((a, b) => a.box.top - b.box.top)
    for (const [i, a] of lines.entries())
      for (let j = i + 1; j < lines.length && lines[j]!.box.top < a.box.bottom - 3; j += 1) {
        const b = lines[j]!
        const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left)
        const down = Math.min(a.box.bottom, b.box.bottom) - b.box.top
        if (a.node !== b.node && a.layer === b.layer && across > 1 && down > 3)
          wrong.push(`over one another: "${a.node.textContent}" and "${b.node.textContent}"`)
      }
    return wrong
  })
