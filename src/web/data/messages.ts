import { language } from '../language.ts'
import { type DeviceMessages, en } from './messages/en.ts'
import { es } from './messages/es.ts'

/** The words of this device, in the language of the page as it is at the time. */
export const d: DeviceMessages = {
  get files() {
    return words().files
  },
  get trouble() {
    return words().trouble
  },
  get status() {
    return words().status
  },
  get update() {
    return words().update
  },
}

const words = (): DeviceMessages => (language() === 'es' ? es : en)
