import { useEffect, useRef, useState } from "react";
import type { FileInPlace } from "./fileInPlace";

type HandingItem = DataTransferItem & { readonly getAsFileSystemHandle?: () => Promise<FileSystemHandle | null> };

/** Takes a file that is dragged in anywhere over the page, and says so while it hovers. */
export function DropTarget({ drop }: { readonly drop: (file: File | FileInPlace) => void }) {
  const [isOver, setOver] = useState(false);
  const take = useRef(drop);
  take.current = drop;

  useEffect(() => {
    const over = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes("Files") !== true) return;
      // Without this the browser would leave the page and show the file by itself.
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const dropped = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes("Files") !== true) return;
      event.preventDefault();
      setOver(false);
      const file = event.dataTransfer.files[0];
      if (file === undefined) return;
      // A browser that hands over the file itself lets it be saved in its place; it must be asked before this event is over.
      const item = [...event.dataTransfer.items].find(({ kind }) => kind === "file") as HandingItem | undefined;
      const handed = item?.getAsFileSystemHandle?.() ?? Promise.resolve(null);
      void handed.catch(() => null).then((handle) => take.current(handle instanceof FileSystemFileHandle ? handle : file));
    };
    window.addEventListener("dragover", over);
    window.addEventListener("dragleave", leave);
    window.addEventListener("drop", dropped);
    return () => {
      window.removeEventListener("dragover", over);
      window.removeEventListener("dragleave", leave);
      window.removeEventListener("drop", dropped);
    };
  }, []);

  return isOver ? <div className="drop-here">Let go to open this workbook</div> : null;
}
