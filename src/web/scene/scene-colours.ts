import { Color, SRGBColorSpace } from 'three'
import type { Material } from '../../core/scene/scene.ts'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import { verdictOrder } from '../../drawing/verdict-signs.ts'

/** Every colour of the scene, by the light that is chosen. */
export interface SceneColours {
  readonly sky: Color
  readonly here: Color
  readonly of: Readonly<Record<Material, Color>>
  readonly verdict: Readonly<Record<VerdictWord, Color>>
  readonly paper: Color
  readonly isNight: boolean
}

const roles: Readonly<Record<Material, string>> = {
  steel: '--scene-steel',
  wood: '--scene-wood',
  concrete: '--scene-concrete',
  cable: '--scene-cable',
  dark: '--scene-dark',
  marker: '--lane',
  ground: '--scene-ground',
  road: '--scene-road',
  lane: '--lane',
  unknown: '--edge',
}

/** The colours of the tokens as they are in force within `host`. */
export function sceneColours(host: HTMLElement): SceneColours {
  const probe = document.createElement('span')
  host.append(probe)
  const colour = (role: string): Color => {
    probe.style.color = `var(${role})`
    return new Color().setStyle(getComputedStyle(probe).color, SRGBColorSpace)
  }
  const of = Object.fromEntries(Object.entries(roles).map(([material, role]) => [material, colour(role)]))
  const verdict = Object.fromEntries(verdictOrder.map((word) => [word, colour(`--${word.replaceAll(' ', '-')}`)]))
  const [sky, here, paper] = [colour('--scene-sky'), colour('--accent'), colour('--sheet')]
  probe.remove()
  return {
    ...{ sky, here, paper },
    of: of as SceneColours['of'],
    verdict: verdict as SceneColours['verdict'],
    isNight: sky.getHSL({ h: 0, s: 0, l: 0 }).l < 0.3,
  }
}
