import { stakePlan } from '../../words/en/drawings/stake-plan.ts'
import type { OwnWords } from '../../words/own-words.ts'
import type { Print } from '../../words/print.ts'

/** What a plan of stakes says of its own, in the language of `print`. */
export const stakePlanWords = (print: Print): OwnWords['stakePlan'] => print.own('stakePlan', stakePlan)
