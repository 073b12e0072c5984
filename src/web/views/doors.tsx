import type { ComponentChildren } from 'preact'
import { m } from '../messages.ts'
import { checkPath, drillsPath, glossaryPath, layOutPath, needPath, shelfPath } from '../route.ts'

/** Where somebody begins, by what they have before them. */
export const Doors = () => (
  <nav class="doors" aria-label={m.doors.label}>
    <Door href={checkPath} words={m.doors.check} isFirst>
      <path class="rail" d="M14 26l38-8h40v8H52l-38 8z" />
      <path class="post" d="M22 30v24M40 27v27M60 22v32M80 22v32" />
      <path class="head" d="M8 22h10v16H8z" />
    </Door>
    <Door href={layOutPath} words={m.doors.layOut}>
      <path class="post" d="M14 18v20M34 18v20M54 18v20M74 18v20" />
      <path class="rail" d="M8 24h80v7H8z" />
      <path class="thin" d="M8 50h80M8 46v8M88 46v8M48 46v8" />
    </Door>
    <Door href={needPath} words={m.doors.need}>
      <path class="thin" d="M8 54L76 18" />
      <path class="head" d="M70 10h16v14H70z" />
      <path class="post" d="M40 44h40" />
      <path class="thin dashed" d="M8 54h80" />
    </Door>
    <p class="ways">
      <a href={shelfPath}>{m.doors.shelf}</a>
      <a href={drillsPath}>{m.doors.practice}</a>
      <a href={glossaryPath}>{m.doors.glossary}</a>
    </p>
  </nav>
)

interface Props {
  readonly href: string
  readonly words: { readonly name: string; readonly what: string }
  readonly isFirst?: boolean
  readonly children: ComponentChildren
}

const Door = ({ href, words, isFirst = false, children }: Props) => (
  <a class={isFirst ? 'door first' : 'door'} href={href}>
    <svg viewBox="0 0 96 64" aria-hidden="true">
      {children}
    </svg>
    <span>
      <b>{words.name}</b> <span class="door-what">{words.what}</span>
    </span>
  </a>
)
