/** Resolves in a task of its own, so that what is drawn is seen and what is pressed is answered before. */
export const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve))
