import type { Step } from './lan-words.ts'

/** What a step looks like on any device: plain signs of our own, no system's own pictures. */
export function stepPicture(picture: Step['picture']): string {
  const device = '<rect x="20" y="6" width="32" height="60" rx="5"/><path d="M32 60h8"/>'
  const inside: Record<Step['picture'], string> = {
    fetch: `${device}<path d="M36 18v22m-8-8 8 8 8-8M27 48h18"/>`,
    settings: `${device}<path d="M27 22h18M27 32h18M27 42h18"/><circle cx="32" cy="22" r="3"/><circle cx="41" cy="32" r="3"/><circle cx="34" cy="42" r="3"/>`,
    switch: `${device}<rect x="26" y="26" width="20" height="12" rx="6"/><circle cx="40" cy="32" r="4" fill="currentColor"/>`,
    open: `${device}<rect x="29" y="31" width="14" height="11" rx="2"/><path d="M32 31v-4a4 4 0 0 1 8 0v4"/>`,
    home: `${device}<rect x="26" y="16" width="8" height="8"/><rect x="38" y="16" width="8" height="8"/><rect x="26" y="28" width="8" height="8"/><path d="M42 28v8m-4-4h8"/>`,
  }
  return `<svg viewBox="0 0 72 72" fill="none" stroke="currentColor" stroke-width="3" stroke-linecap="round" stroke-linejoin="round" aria-hidden="true">${inside[picture]}</svg>`
}
