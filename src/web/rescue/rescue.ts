// The page of last resort. It shares no code with the other one, so that what breaks that one does not break this.
import { chosen, messages } from './messages.ts'
import { openStore } from './read-store.ts'
import { rescue } from './rescue-files.ts'

const m = messages()
const main = document.getElementById('rescue')!
document.title = m.title
document.documentElement.lang = m.language
const light = chosen('light')
// Else it follows the device.
if (light === 'sun' || light === 'night') document.documentElement.dataset.light = light

void show()

async function show(): Promise<void> {
  const state = text('p', m.reading)
  state.setAttribute('role', 'status')
  main.append(text('h1', m.title), text('p', m.what), state)
  try {
    const store = await openStore()
    if (store === null) state.textContent = m.nothing
    else await showFound(store, state)
  } catch (error) {
    state.textContent = m.shut(String(error))
  }
  const back = text('a', m.back)
  back.setAttribute('href', './')
  main.append(back)
}

async function showFound(store: IDBDatabase, state: HTMLElement): Promise<void> {
  const writtenAt = new Date().toISOString()
  const day = writtenAt.slice(0, 10)
  const { file, entries, photos, rest, left, held, sheets } = await rescue(store, writtenAt)
  store.close()
  state.textContent = m.found(entries, photos)
  main.append(saveButton(m.save, file, `lapwise-rescue-${day}.json`), text('p', m.bring))
  if (held.length > 0) main.append(text('p', m.held))
  main.append(...held.map((one) => saveButton(m.saveHeld(one.name), one.file, one.name)))
  if (sheets.length > 0) main.append(text('p', m.sheets))
  main.append(...sheets.map((one) => saveButton(m.saveHeld(one.name), one.file, one.name)))
  if (left.length === 0) return
  const list = document.createElement('ul')
  list.append(...left.map(({ table, key, reason }) => text('li', m.leftOne(table, key, reason))))
  main.append(text('p', m.left(left.length)), list)
  if (rest !== null) main.append(saveButton(m.saveRest, rest, `lapwise-rest-${day}.json`), text('p', m.kept))
}

function saveButton(words: string, file: Blob, name: string): HTMLElement {
  const button = text('button', words)
  button.addEventListener('click', () => {
    const link = document.createElement('a')
    link.href = URL.createObjectURL(file)
    link.download = name
    link.click()
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000)
  })
  return button
}

function text(tag: 'a' | 'button' | 'h1' | 'li' | 'p', words: string): HTMLElement {
  const element = document.createElement(tag)
  element.textContent = words
  return element
}
