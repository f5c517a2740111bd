import { useId, useState } from 'react';

interface FileEntryProps {
  readonly label: string;
  readonly accept: string;
  readonly onRead: (text: string, name: string) => void;
}

/** A file of this machine, read as text. The same file can be chosen again after it was put right. */
export const FileEntry = ({ label, accept, onRead }: FileEntryProps) => {
  const id = useId();
  const [name, setName] = useState('');
  return (
    <div className="entry">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="file"
        accept={accept}
        onClick={(event) => {
          event.currentTarget.value = '';
        }}
        onChange={(event) => {
          const file = event.target.files?.[0];
          if (file === undefined) return;
          setName(file.name);
          void file.text().then((text) => onRead(text, file.name));
        }}
      />
      {name !== '' && <small>Read: {name}</small>}
    </div>
  );
};
