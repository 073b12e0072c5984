import { type DeviceMessages, en } from './messages/en.ts'

let words: DeviceMessages = en

/** The words of this device, in the language of the page as it is at the time. */
export const d: DeviceMessages = {
  get files() {
    return words.files
  },
  get trouble() {
    return words.trouble
  },
  get status() {
    return words.status
  },
  get update() {
    return words.update
  },
}

/** Puts them in force here: in the page, or in its worker, which has its own. */
export function speakOfDevice(next: DeviceMessages): void {
  words = next
}
