import type { ComponentProps } from 'react';
import styles from './Button.module.css';

type Props = ComponentProps<'button'> & {
  /** A glyph alone, its words in `aria-label`. */
  readonly small?: boolean;
};

export function Button({ small = false, className, ...rest }: Props) {
  const names = [styles.button, small ? styles.small : '', className ?? ''];
  return <button type="button" {...rest} className={names.filter(Boolean).join(' ')} />;
}
