import styles from './Switch.module.css';

interface Props {
  readonly id: string;
  readonly checked: boolean;
  readonly onSwitch: (checked: boolean) => void;
  readonly label?: string;
  readonly describedBy?: string;
  readonly disabled?: boolean;
}

/** A checkbox; its name comes from a label elsewhere, or from `label` where there is none. */
export function Switch({ id, checked, onSwitch, label, describedBy, disabled = false }: Props) {
  return (
    <input
      id={id}
      type="checkbox"
      className={styles.box}
      checked={checked}
      disabled={disabled}
      aria-label={label}
      aria-describedby={describedBy}
      onChange={(event) => onSwitch(event.currentTarget.checked)}
    />
  );
}
