import { fireEvent, render, screen } from '@testing-library/react';
import { describe, expect, test, vi } from 'vitest';
import { Button } from '../../src/ui/kit/Button.tsx';
import { Disclosure } from '../../src/ui/kit/Disclosure.tsx';
import { FieldFrame, noteIdOf } from '../../src/ui/kit/FieldFrame.tsx';
import { Select } from '../../src/ui/kit/Select.tsx';
import { Switch } from '../../src/ui/kit/Switch.tsx';
import { TextBox } from '../../src/ui/kit/TextBox.tsx';

describe('the kit', () => {
  test('a button does not submit a form around it', () => {
    const submit = vi.fn((event: { preventDefault: () => void }) => event.preventDefault());
    render(
      <form onSubmit={submit}>
        <Button>Save</Button>
      </form>,
    );
    fireEvent.click(screen.getByRole('button', { name: 'Save' }));
    expect(submit).not.toHaveBeenCalled();
  });

  test('a select tells the value that was chosen', () => {
    const choose = vi.fn();
    const options = [
      { value: 'a', label: 'round wires' },
      { value: 'b', label: 'punched sheet' },
    ];
    render(<Select aria-label="Guard" value="a" options={options} onChoose={choose} />);
    fireEvent.change(screen.getByRole('combobox', { name: 'Guard' }), { target: { value: 'b' } });
    expect(choose).toHaveBeenCalledExactlyOnceWith('b');
  });

  test('a switch tells whether it is on', () => {
    const flip = vi.fn();
    render(<Switch id="x" label="Fitted" checked={false} onSwitch={flip} />);
    fireEvent.click(screen.getByRole('checkbox', { name: 'Fitted' }));
    expect(flip).toHaveBeenCalledExactlyOnceWith(true);
  });

  test('a text box tells every key and does not correct it', () => {
    const type = vi.fn();
    render(<TextBox aria-label="Gap" value="0.8" unit="mm" onText={type} />);
    const box = screen.getByRole('textbox', { name: 'Gap' });
    expect(box).toHaveAttribute('spellcheck', 'false');
    expect(box).toHaveAttribute('autocomplete', 'off');
    fireEvent.change(box, { target: { value: '0,8 mmm' } });
    expect(type).toHaveBeenCalledExactlyOnceWith('0,8 mmm');
  });

  test('a disclosure hides what it holds until it is opened', () => {
    render(<Disclosure summary="Title block">inside</Disclosure>);
    expect(screen.getByRole('group')).not.toHaveAttribute('open');
    expect(screen.getByText('inside')).toBeInTheDocument();
  });

  describe('a field frame', () => {
    const frame = (problem: string | null, warning: string | null = null) => (
      <FieldFrame id="gap" label="Gap" unit="mm" help="Between two fins." problem={problem} warning={warning}>
        <input id="gap" aria-describedby={noteIdOf('gap')} />
      </FieldFrame>
    );

    test('names its control and the unit of a bare number', () => {
      render(frame(null));
      expect(screen.getByRole('textbox', { name: 'Gap (mm)' })).toHaveAccessibleDescription(
        'Between two fins.',
      );
    });

    test('describes the control by what is wrong, and keeps the help', () => {
      render(frame('Out of bounds.'));
      expect(screen.getByRole('textbox')).toHaveAccessibleDescription(/Between two fins\.\s*Out of bounds\./);
    });

    test('lets a problem go before a warning', () => {
      render(frame('Out of bounds.', 'Unusual.'));
      expect(screen.queryByText('Unusual.')).toBeNull();
      expect(screen.getByText('Out of bounds.').parentElement).toHaveAttribute('data-state', 'problem');
    });

    test('keeps the help in place under a message, so that nothing moves', () => {
      const { rerender } = render(frame(null));
      const note = document.getElementById(noteIdOf('gap'));
      rerender(frame(null, 'Unusual.'));
      expect(document.getElementById(noteIdOf('gap'))).toBe(note);
      expect(note).toHaveTextContent('Between two fins.');
      expect(note).toHaveAttribute('data-state', 'warning');
    });
  });
});
