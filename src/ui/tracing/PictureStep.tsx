import { useRef } from 'react';
import type { PictureKeeping } from '../../store/tracing/desk.ts';
import { Button } from '../kit/Button.tsx';
import { keepingWords } from './keepingWords.ts';
import { takenTypes } from './readPictureFile.ts';
import styles from './Steps.module.css';
import { useTracing } from './TracingContext.ts';

interface Props {
  readonly keeping: PictureKeeping;
  readonly refusal: string | null;
  readonly onFile: (file: File) => void;
}

/** Where the picture comes from, and where it stays. */
export function PictureStep({ keeping, refusal, onFile }: Props) {
  const input = useRef<HTMLInputElement>(null);
  const hasPicture = useTracing(({ picture }) => picture !== null);
  return (
    <>
      {refusal !== null && (
        <p className={styles.wrong} role="alert">
          {refusal}
        </p>
      )}
      <input
        ref={input}
        type="file"
        hidden
        accept={takenTypes.join()}
        aria-label="Picture of a data sheet"
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file) onFile(file);
          // The same file may be chosen again.
          currentTarget.value = '';
        }}
      />
      <Button onClick={() => input.current?.click()}>
        {hasPicture ? 'Take another picture…' : 'Choose a picture…'}
      </Button>
      <p className={styles.note} role="status">
        {keepingWords[keeping]}
      </p>
      {hasPicture && (
        <p className={styles.note}>
          Another picture takes the marks and points of this one with it; “Take back” brings them again.
        </p>
      )}
      <p className={styles.note}>
        A sheet that lies turned or pulled skew is read right; one photographed from the side is not.
      </p>
    </>
  );
}
