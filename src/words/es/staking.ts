import type { StakeSaying } from '../../core/staking/stake-saying.ts'
import type { Printers } from '../print.ts'
import { sheetKind } from './fit-changes.ts'

export const staking: Printers<StakeSaying> = {
  'post at stake': ({ of, block, own, state }, print) =>
    [
      `${print.say(of)} ${block ? 'con' : 'sin'} bloque`,
      ...(own === null ? [] : [`poste ${own.number} del ${sheetKind[own.unit]}`]),
      ...(state === null ? [] : [state === 'moved' ? 'movido' : 'ya está']),
    ].join(', '),
}
