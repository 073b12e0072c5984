/** Names of sheets begin with a small letter inside a sentence. */
export const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)
