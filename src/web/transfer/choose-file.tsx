import { useState } from 'preact/hooks'
import type { RunSource } from '../data/run-source.ts'
import { TakeIn } from './take-in.tsx'
import { words } from './words.ts'

/** A file from another device is chosen, looked at and taken in. */
export function ChooseFile({ source }: { readonly source: RunSource }) {
  const [file, setFile] = useState<File | null>(null)
  return (
    <>
      <label>
        <span>{words().take}</span>
        <input
          type="file"
          accept=".zip,.json,application/zip,application/json"
          onChange={({ currentTarget }) => {
            const chosen = currentTarget.files?.[0]
            if (chosen !== undefined) setFile(chosen)
            currentTarget.value = ''
          }}
        />
      </label>
      {file !== null && <TakeIn source={source} file={file} close={() => setFile(null)} />}
    </>
  )
}
