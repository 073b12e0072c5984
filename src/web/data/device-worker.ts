import { expose, proxy } from 'comlink'
import { type Language, speak } from '../language.ts'
import { openDeviceStore } from './device-store.ts'
import { localSource, type PageEnd } from './local-source.ts'

/** Keeps this device's store apart from the page, so that the page answers while it reads, judges, sends and fetches. */
const deviceWorker = {
  speak,
  /** To be called once. */
  open(page: PageEnd, language: Language) {
    speak(language)
    return proxy(localSource(openDeviceStore(), page))
  },
}

export type DeviceWorker = typeof deviceWorker

expose(deviceWorker)
