/** Options of `loamwright material`. */
export interface MaterialOptions {
  readonly all?: boolean | undefined;
  readonly find?: string | undefined;
  readonly is?: string | undefined;
  readonly like?: string | undefined;
  readonly raw?: boolean | undefined;
  readonly ratio?: string | undefined;
  readonly nitrogen?: string | undefined;
  readonly ash?: string | undefined;
  readonly weight?: string | undefined;
  readonly squeeze?: string | undefined;
  readonly wet?: string | undefined;
  readonly dry?: string | undefined;
  readonly container?: string | undefined;
  readonly microwave?: boolean | undefined;
  readonly full?: string | undefined;
  readonly empty?: string | undefined;
  readonly holds?: string | undefined;
  readonly packed?: boolean | undefined;
  readonly filled?: string | undefined;
  readonly settled?: string | undefined;
  readonly instead?: boolean | undefined;
  readonly when?: string | undefined;
  readonly note?: string | undefined;
}
