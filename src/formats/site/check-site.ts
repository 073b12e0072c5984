import type { Site } from '../../core/site/site.ts'
import { isShorter } from '../../core/units/exact-length.ts'
import { written } from '../input-problem.ts'
import type { SiteFile } from './site-file.ts'
import type { Fault } from './station-text.ts'

/** What cannot be at a place even though every field by itself could be. */
export function checkSite(site: Site, file: SiteFile, faults: Fault[]): void {
  const unit = site.units === 'us' ? 'ft' : 'm'
  const offset = site.barrier.offset
  site.hazards.forEach((hazard, i) => {
    const stated = file.hazards[i]!
    const place = `hazards[${i}]`
    if (hazard.near < 0)
      faults.push({
        place: `${place}.near`,
        expected: { kind: 'outside travelled way' },
        found: written(stated.near),
      })
    if (hazard.far === null && !hazard.beyondClearZone)
      faults.push({
        place: `${place}.far`,
        expected: { kind: 'far side' },
        found: { kind: 'neither' },
      })
    if (hazard.far !== null && isShorter(hazard.far, hazard.near))
      faults.push({
        place: `${place}.far`,
        expected: { kind: 'beyond near side', value: stated.near, unit },
        found: written(stated.far),
      })
    if (stated.side !== site.side)
      faults.push({
        place: `${place}.side`,
        expected: { kind: 'side of first hazard', side: site.side },
        found: written(stated.side),
      })
    if (hazard.near >= 0 && isShorter(hazard.near, offset))
      faults.push({
        place: 'barrier.offset',
        expected: { kind: 'barrier in front', hazard: hazard.name, bound: 'at most', value: stated.near, unit },
        found: written(file.barrier.offset),
      })
    else if (hazard.far !== null && !isShorter(offset, hazard.far))
      faults.push({
        place: 'barrier.offset',
        expected: { kind: 'barrier in front', hazard: hazard.name, bound: 'less than', value: stated.far!, unit },
        found: written(file.barrier.offset),
      })
  })
  checkMedian(site, faults)
  checkCurb(site, faults)
}

function checkCurb({ hardware: { curb } }: Site, faults: Fault[]): void {
  if (curb === null || curb === 'none') return
  if (curb.face === 'vertical' && curb.faceSlope !== null)
    faults.push({
      place: 'hardware.curb.faceSlope',
      expected: { kind: 'no slope of vertical face' },
      found: written(curb.faceSlope),
    })
}

function checkMedian({ road }: Site, faults: Fault[]): void {
  const place = 'road.medianWidth'
  if (road.traffic !== 'divided' && road.medianWidth !== null)
    faults.push({ place, expected: { kind: 'no median' }, found: { kind: 'one' } })
  if (
    road.traffic === 'divided' &&
    road.medianWidth === null &&
    road.alignment.kind === 'elements' &&
    road.alignment.line === 'centreline'
  )
    faults.push({ place, expected: { kind: 'width of median' }, found: { kind: 'nothing' } })
}
