import * as z from 'zod/mini'

/** What of the input is not as it has to be, and where: an `InputProblem` of the formats. */
export const problem = z.object({ file: z.string(), place: z.string(), expected: z.string(), found: z.string() })

/** Why a request was not answered as asked. */
export const errorAnswer = z.object({
  error: z.object({ message: z.string(), problems: z.optional(z.readonly(z.array(problem))) }),
})

export type ErrorAnswer = z.output<typeof errorAnswer>
