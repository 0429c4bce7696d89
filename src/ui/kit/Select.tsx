import type { ComponentProps } from 'react';
import styles from './Select.module.css';

export interface SelectOption {
  readonly value: string;
  readonly label: string;
}

type Props = Omit<ComponentProps<'select'>, 'onChange'> & {
  readonly options: readonly SelectOption[];
  readonly onChoose: (value: string) => void;
};

export function Select({ options, onChoose, className, ...rest }: Props) {
  return (
    <select
      {...rest}
      className={`${styles.select} ${className ?? ''}`}
      onChange={(event) => onChoose(event.currentTarget.value)}
    >
      {options.map(({ value, label }) => (
        <option key={value} value={value}>
          {label}
        </option>
      ))}
    </select>
  );
}
