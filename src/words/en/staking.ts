import type { StakeSaying } from '../../core/staking/stake-saying.ts'
import type { Printers } from '../print.ts'

export const staking: Printers<StakeSaying> = {
  'post at stake': ({ of, block, own, state }, print) =>
    [
      `${print.say(of)} ${block ? 'with' : 'without'} block`,
      ...(own === null ? [] : [`post ${own.number} of the ${own.unit}`]),
      ...(state === null ? [] : [state]),
    ].join(', '),
}
