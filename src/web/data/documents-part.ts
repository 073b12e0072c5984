import { later } from './later.ts'

/** What makes documents is in a copy without a server alone: elsewhere the server makes them. */
export const documentsPart = () =>
  later(() =>
    import.meta.env?.MODE === 'static'
      ? import('./device-documents.ts')
      : Promise.reject(new Error('made by the server')),
  )
