import type { ComponentChildren } from 'preact'
import { useErrorBoundary } from 'preact/hooks'
import { m } from '../messages.ts'
import { rescuePath } from '../route.ts'

/** Instead of a page that broke, what can be done: nothing that was saved is gone with it. */
export function BrokenPage({ children }: { readonly children: ComponentChildren }) {
  const [error, tryAgain] = useErrorBoundary()
  if (error === undefined) return <>{children}</>
  return (
    <section class="sheet" role="alert">
      <h1>{m.broken.title}</h1>
      <p>{m.broken.kept}</p>
      <p class="trouble">{String(error)}</p>
      <p>
        <button type="button" class="button main" onClick={tryAgain}>
          {m.broken.again}
        </button>{' '}
        <a class="button" href={rescuePath} target="_top">
          {m.broken.rescue}
        </a>
      </p>
      <p>{m.broken.help}</p>
    </section>
  )
}
