import { Component, type ErrorInfo, type ReactNode } from 'react';

interface Props {
  /** What stands there after a fault, with a way to try again. */
  readonly instead: (message: string, again: () => void) => ReactNode;
  /** Another value here is another try. */
  readonly of?: unknown;
  readonly children: ReactNode;
}

interface State {
  readonly message: string | null;
  readonly of: unknown;
}

/** Keeps a fault in one part of the page from taking the rest with it. Only a class can be this. */
export class Boundary extends Component<Props, State> {
  override state: State = { message: null, of: this.props.of };

  static getDerivedStateFromError(error: unknown): Partial<State> {
    return { message: error instanceof Error ? error.message : String(error) };
  }

  static getDerivedStateFromProps({ of }: Props, state: State): Partial<State> | null {
    return of === state.of ? null : { of, message: null };
  }

  override componentDidCatch(error: unknown, { componentStack }: ErrorInfo) {
    console.error(error, componentStack);
  }

  override render() {
    const { message } = this.state;
    if (message === null) return this.props.children;
    return this.props.instead(message, () => this.setState({ message: null }));
  }
}
