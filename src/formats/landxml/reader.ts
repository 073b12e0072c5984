import type { Point } from '../../core/geometry/point.ts'
import type { Metres } from '../../core/units/quantity.ts'
import type { InputProblem } from '../input-problem.ts'
import { childrenOf, type XmlElement } from './xml-tree.ts'

/** Reads attributes and points and collects what is wrong with them; a value that cannot be read is 0 or null. */
export class Reader {
  readonly problems: InputProblem[] = []
  private readonly file: string

  constructor(file: string) {
    this.file = file
  }

  fault(element: XmlElement, expected: string, found: string): void {
    this.problems.push({ file: this.file, place: element.place, expected, found })
  }

  attribute(element: XmlElement, name: string): string {
    const value = element.attributes[name]
    if (value === undefined) this.fault(element, `the attribute ${name} of ${element.name}`, 'none')
    return value?.trim() ?? ''
  }

  number(element: XmlElement, name: string): number {
    const written = this.attribute(element, name)
    if (written === '') return 0
    const value = Number(written)
    if (!Number.isFinite(value)) this.fault(element, `a number in ${name} of ${element.name}`, written)
    return Number.isFinite(value) ? value : 0
  }

  /** The point in the child `name`, written "northing easting" and perhaps an elevation. */
  point(element: XmlElement, name: string, long: (value: number) => Metres): Point | null {
    const child = childrenOf(element, name)[0]
    if (child === undefined) {
      this.fault(element, `${name} in ${element.name}`, 'none')
      return null
    }
    if (child.attributes.pntRef !== undefined) {
      this.fault(child, `the coordinates of ${name} written out`, `a reference to point ${child.attributes.pntRef}`)
      return null
    }
    const numbers = child.text.trim().split(/\s+/).map(Number)
    const [northing, easting] = numbers
    if (numbers.length < 2 || numbers.length > 3 || !numbers.every(Number.isFinite)) {
      this.fault(child, `"northing easting" in ${name}`, JSON.stringify(child.text.trim()))
      return null
    }
    return { easting: long(easting!), northing: long(northing!) }
  }
}
