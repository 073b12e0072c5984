/** Without case and accents, as somebody types it in a hurry. */
export const plainText = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim()
