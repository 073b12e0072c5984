import { expose, proxy } from 'comlink'
import type { Language } from '../language.ts'
import { openDeviceStore } from './device-store.ts'
import { openTables } from './device-tables.ts'
import { later } from './later.ts'
import { localSource } from './local-source.ts'
import { en } from './messages/en.ts'
import { speakOfDevice } from './messages.ts'
import type { PageEnd, StorePlace } from './page-end.ts'

/** Keeps this device's store apart from the page, so that the page answers while it reads, judges, sends and fetches. */
const deviceWorker = {
  speak,
  /** To be called once. */
  async open(page: PageEnd, language: Language, place: StorePlace) {
    await speak(language)
    const store =
      place === 'practice' ? openDeviceStore((known) => openTables('lapwise-practice', known)) : openDeviceStore()
    return proxy(localSource(store, page, place))
  },
}

let wanted: Language = 'en'

/** Puts the words of a language in force; without a connection to fetch them, those that are stay. */
async function speak(language: Language): Promise<void> {
  wanted = language
  if (language === 'en') return speakOfDevice(en)
  const words = await later(() => import('./messages/es.ts'))
  if (words.ok && wanted === language) speakOfDevice(words.value.es)
}

export type DeviceWorker = typeof deviceWorker

expose(deviceWorker)
