/**
 * What a photo is shrunk to unless its original is kept: long edge in pixels, and JPEG quality. Enough to read a tape
 * held beside a post; our judgement.
 */
export const shrunk = { edge: 1600, quality: 0.8 } as const
