import { html } from "lit";
import { t } from "../text/index.js";
import { Element } from "../ui/element.js";
import { qrOf } from "./qr.js";

const QUIET_ZONE = 4;

/** An address to be read by another phone's camera. */
export class QrCode extends Element {
  static properties = { text: {} };

  constructor() {
    super();
    this.text = "";
  }

  render() {
    if (!this.text) return "";
    const rows = qrOf(this.text);
    const size = rows.length + 2 * QUIET_ZONE;
    const dark = rows.flatMap((row, y) => row.flatMap((one, x) => (one ? [`M${x + QUIET_ZONE} ${y + QUIET_ZONE}h1v1h-1z`] : []))).join("");
    return html`<svg viewBox="0 0 ${size} ${size}" role="img" aria-label=${t("people.invite.qr.label")} shape-rendering="crispEdges">
      <path class="light" d="M0 0h${size}v${size}h-${size}z"/><path d=${dark}/></svg>`;
  }
}
