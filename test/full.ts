/** Whether everything is tried at length: more random runs against the referees, and a longer soak. */
export const isFull = process.env.LAPWISE_FULL === '1'
