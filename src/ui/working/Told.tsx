import type { KeyNumber } from '../../report/types.ts';
import { Worked } from './Worked.tsx';

/** A sentence whose key number opens its working. */
export function Told({ sentence, number }: { readonly sentence: string; readonly number: KeyNumber | null }) {
  const at = number === null ? -1 : sentence.indexOf(number.text);
  if (number === null || at < 0) return sentence;
  return (
    <>
      {sentence.slice(0, at)}
      <Worked id={number.figure} text={number.text} of={number.of} />
      {sentence.slice(at + number.text.length)}
    </>
  );
}
