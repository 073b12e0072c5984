import type { Page } from '@playwright/test'

const panes = ['', '/findings', '/not-proven', '/readings', '/day', '/sign-off', '/record', '/layout']
const entries = [
  'post-1/stub-height',
  'post-1/bearing-plate',
  'splice-2/lap',
  'panel-3/panel-length',
  'space-3/spacing',
]

/** Addresses of every pane of the run at `address` and of some of its requirements. */
export async function pathsOf(page: Page, address: string, name: string): Promise<readonly string[]> {
  await page.goto(address)
  const run = await page.getByRole('link', { name }).first().getAttribute('href')
  return [...panes.map((pane) => run + pane), ...entries.map((id) => `${run}/walk/${id}`)]
}

/** What is seen and what is read out, text by text. */
export const textsOn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    // What is folded is drawn once it is opened, and may have folds of its own.
    for (let folded = [...document.querySelectorAll('details:not([open])')]; folded.length > 0; ) {
      for (const one of folded) one.setAttribute('open', '')
      for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame)
      folded = [...document.querySelectorAll('details:not([open])')].filter((one) => !folded.includes(one))
    }
    const texts: string[] = []
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode())
      // A language is named in itself.
      if (node.parentElement?.closest('noscript, script, style, option[lang]') === null)
        texts.push(node.textContent ?? '')
    for (const one of document.querySelectorAll('[aria-label], [title], [placeholder], [aria-valuetext]'))
      for (const name of ['aria-label', 'title', 'placeholder', 'aria-valuetext'])
        texts.push(one.getAttribute(name) ?? '')
    // What keeps a number and its unit on one line is a space to who reads.
    return texts.map((text) => text.replaceAll('\u00a0', ' ').trim()).filter((text) => text !== '')
  })
