import type { Site } from '../../core/site/site.ts'
import { isShorter } from '../../core/units/exact-length.ts'
import type { SiteFile } from './site-file.ts'
import type { Fault } from './station-text.ts'

/** What cannot be at a place even though every field by itself could be. */
export function checkSite(site: Site, file: SiteFile, faults: Fault[]): void {
  const unit = site.units === 'us' ? 'ft' : 'm'
  const offset = site.barrier.offset
  site.hazards.forEach((hazard, i) => {
    const written = file.hazards[i]!
    const place = `hazards[${i}]`
    if (hazard.near < 0)
      faults.push({
        place: `${place}.near`,
        expected: 'a hazard outside the travelled way, 0 or more from its edge (this one stands in the lane)',
        found: String(written.near),
      })
    if (hazard.far === null && !hazard.beyondClearZone)
      faults.push({
        place: `${place}.far`,
        expected: 'the lateral distance to its far side, or beyondClearZone true',
        found: 'neither',
      })
    if (hazard.far !== null && isShorter(hazard.far, hazard.near))
      faults.push({
        place: `${place}.far`,
        expected: `at least the lateral distance to its near side, ${written.near} ${unit}`,
        found: String(written.far),
      })
    if (written.side !== site.side)
      faults.push({
        place: `${place}.side`,
        expected: `the side of the first hazard, "${site.side}": one site is one run on one side`,
        found: JSON.stringify(written.side),
      })
    if (hazard.near >= 0 && isShorter(hazard.near, offset))
      faults.push({
        place: 'barrier.offset',
        expected: `a barrier in front of ${JSON.stringify(hazard.name)}, at most ${written.near} ${unit} from the edge of travelled way`,
        found: String(file.barrier.offset),
      })
    else if (hazard.far !== null && !isShorter(offset, hazard.far))
      faults.push({
        place: 'barrier.offset',
        expected: `a barrier in front of ${JSON.stringify(hazard.name)}, less than ${written.far} ${unit} from the edge of travelled way`,
        found: String(file.barrier.offset),
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
      expected: 'no slope of a face that is vertical',
      found: String(curb.faceSlope),
    })
}

function checkMedian({ road }: Site, faults: Fault[]): void {
  const place = 'road.medianWidth'
  if (road.traffic !== 'divided' && road.medianWidth !== null)
    faults.push({ place, expected: 'no median on a road that is not divided', found: 'one' })
  if (
    road.traffic === 'divided' &&
    road.medianWidth === null &&
    road.alignment.kind === 'elements' &&
    road.alignment.line === 'centreline'
  )
    faults.push({ place, expected: 'the width of the median, to find the edge from the centreline', found: 'nothing' })
}
