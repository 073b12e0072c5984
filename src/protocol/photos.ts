import * as z from 'zod/mini'

/** Most photos asked for at once. */
export const mostPhotosAsked = 1000

const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/))

/** Photos by their hashes, asked whether they are stored. */
export const photosAsked = z.object({ photos: z.array(hash).check(z.maxLength(mostPhotosAsked)) })

/** Those of them whose bytes are stored. */
export const photosStored = z.object({ stored: z.readonly(z.array(hash)) })

export type PhotosStored = z.output<typeof photosStored>
