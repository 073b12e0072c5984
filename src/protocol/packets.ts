import * as z from 'zod/mini'
import { languages } from '../core/language.ts'
import { payRoundings } from '../core/quantities/pay-length.ts'
import { paperNames } from '../core/units/paper-names.ts'
import { form } from '../formats/range/form.ts'
import { isZone } from '../formats/zone-name.ts'
import type { ErrorAnswer } from './error-answer.ts'
import { packetPurposes } from './packet-purposes.ts'

/** What a packet is asked for. */
export const packetWish = z.object({
  purpose: z._default(z.nullable(z.enum(packetPurposes)), null),
  page: z.enum(paperNames),
  author: z.string().check(z.maxLength(200)),
  rounding: z.enum(payRoundings),
  /** Of all documents but the crew sheet, which is made in each. */
  language: z._default(z.enum(languages), 'en'),
  /** Whether photos are printed and put into it. */
  photos: z.boolean(),
  /** Whose days the daily reports take, as `America/Denver`. */
  zone: z.string().check(z.refine(isZone, form('time zone'))),
})

export type PacketWish = z.output<typeof packetWish>

/** A file of a packet that is about to be made. */
export interface PacketStep {
  readonly file: string
  /** From 1. */
  readonly number: number
  readonly of: number
}

/** A line of the answer: one for each file as it is begun, at last where the packet is or why there is none. */
export type PacketLine = { readonly making: PacketStep } | { readonly packet: string } | ErrorAnswer
