/** What we use of uPlot; the library's own types are not part of the build. */
export default class uPlot {
  constructor(options: object, data: (number | null)[][], place: HTMLElement);
  readonly width: number;
  readonly height: number;
  static paths: Record<string, (options?: object) => unknown>;
  setData(data: (number | null)[][]): void;
  setSize(size: { width: number; height: number }): void;
  destroy(): void;
}
