/** What we use of lit; the library's own types are not part of the build. */
export const nothing: unique symbol;
export function html(strings: TemplateStringsArray, ...values: unknown[]): unknown;
export function svg(strings: TemplateStringsArray, ...values: unknown[]): unknown;
export class LitElement extends HTMLElement {
  static properties: Record<string, object>;
  readonly hasUpdated: boolean;
  readonly updateComplete: Promise<boolean>;
  requestUpdate(name?: PropertyKey, old?: unknown): void;
  createRenderRoot(): Element | ShadowRoot;
  connectedCallback(): void;
  disconnectedCallback(): void;
  render(): unknown;
  willUpdate(changed: Map<PropertyKey, unknown>): void;
  firstUpdated(changed: Map<PropertyKey, unknown>): void;
  updated(changed: Map<PropertyKey, unknown>): void;
}
export function repeat<T>(items: Iterable<T>, key: (item: T) => unknown, draw: (item: T, index: number) => unknown): unknown;
export function live(value: unknown): unknown;

/** Draws anew only when one of these has changed. */
export function guard(about: unknown[], draw: () => unknown): unknown;
export const noChange: unique symbol;

/** A part of a template that may be given its value later. */
export class AsyncDirective {
  readonly isConnected: boolean;
  setValue(value: unknown): void;
  reconnected(): void;
}
export function directive(kind: new () => AsyncDirective): (...values: any[]) => unknown;
