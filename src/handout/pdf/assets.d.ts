declare module '*.woff?url' {
  const url: string;
  export default url;
}
declare module 'pdfkit/output' {
  export function toBlob(document: PDFKit.PDFDocument): Promise<Blob>;
}
