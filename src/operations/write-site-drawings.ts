import type { EndSheet } from '../core/hardware/hardware-sheet.ts'
import { designValues } from '../core/need/design-values.ts'
import type { Need } from '../core/need/need.ts'
import type { Site } from '../core/site/site.ts'
import type { Metres } from '../core/units/quantity.ts'
import { writeSvg } from '../drawing/svg/write-svg.ts'
import type { PlanInput, SitePage, SiteView } from '../drawing/views/plan/site-view.ts'
import { planDrawing } from '../drawing/views/plan.ts'
import { sectionDrawing } from '../drawing/views/section.ts'
import type { Print } from '../words/print.ts'
import { sheetShelf } from './sheet-shelf.ts'

/**
 * The plan of a site as SVG.
 * @param need  null where it was refused
 */
export const writePlan = (site: Site, need: Need | null, page: SitePage, print: Print): string =>
  writeSvg(planDrawing(planInput(site, need, page, print)))

/** The cross section of a site at `station` (continuous, m) as SVG. */
export const writeSection = (site: Site, need: Need | null, station: Metres, page: SitePage, print: Print): string =>
  writeSvg(sectionDrawing(siteView(site, need, page, print), station))

/** The plan that fits the whole of the need. */
export const planInput = (site: Site, need: Need | null, page: SitePage, print: Print): PlanInput => ({
  ...siteView(site, need, page, print),
  range: null,
})

function siteView(site: Site, need: Need | null, page: SitePage, print: Print): SiteView {
  const values = designValues(site)
  const shelf = sheetShelf(site.sheets)
  const end = (id: string | null): EndSheet | null => {
    const sheet = id === null ? undefined : shelf.get(id)
    return sheet === undefined || sheet.kind === 'longitudinal' ? null : sheet
  }
  const approachEnd = end(site.barrier.approachEnd)
  const departureEnd = end(site.barrier.departureEnd)
  const system = site.hardware.system === null ? undefined : shelf.get(site.hardware.system)
  return {
    site,
    need,
    clearZone: values.ok ? values.value.clearZone : null,
    shyLine: values.ok ? values.value.shyLine : null,
    approachEnd,
    departureEnd,
    railHeight: (system ?? approachEnd ?? departureEnd)?.railHeight ?? null,
    page,
    print,
  }
}
