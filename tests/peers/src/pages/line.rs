//! One open line to a server, and the plainest of servers.

use crate::harness::Result;
use std::{
    io::{BufRead, BufReader, Read, Write},
    net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream},
    time::{Duration, Instant},
};

/// A line that stays open (HTTP/1.1).
pub struct Line {
    stream: BufReader<TcpStream>,
    host: SocketAddr,
}

impl Line {
    /// A line to the server at `host`.
    pub fn to(host: SocketAddr) -> Result<Self> {
        let stream = TcpStream::connect(host)?;
        stream.set_nodelay(true)?;
        stream.set_read_timeout(Some(Duration::from_secs(20)))?;
        let stream = BufReader::new(stream);
        Ok(Self { stream, host })
    }

    /// The whole answer, head and body.
    pub fn get(&mut self, path: &str) -> Result<Vec<u8>> {
        self.ask(path)?;
        let (mut answer, length) = self.head()?;
        let start = answer.len();
        answer.resize(start + length.ok_or("the answer has no length")?, 0);
        self.stream.read_exact(&mut answer[start..])?;
        match answer.starts_with(b"HTTP/1.1 200") {
            true => Ok(answer),
            false => Err(format!("{path}: {}", String::from_utf8_lossy(&answer)).into()),
        }
    }

    /// How long that takes.
    pub fn timed(&mut self, path: &str) -> Result<Duration> {
        let start = Instant::now();
        self.get(path)?;
        Ok(start.elapsed())
    }

    /// Asks for what has no end, and keeps the line open.
    pub fn open(mut self, path: &str) -> Result<Self> {
        self.ask(path)?;
        self.head()?;
        Ok(self)
    }

    fn ask(&mut self, path: &str) -> Result<()> {
        let asked = format!("GET {path} HTTP/1.1\r\nHost: {}\r\n\r\n", self.host);
        Ok(self.stream.get_mut().write_all(asked.as_bytes())?)
    }

    /// The head, and how long the body is.
    fn head(&mut self) -> Result<(Vec<u8>, Option<usize>)> {
        let (mut head, mut length) = (vec![], None);
        loop {
            let start = head.len();
            if self.stream.read_until(b'\n', &mut head)? == 0 {
                return Err("the line was cut".into());
            }
            let line = String::from_utf8_lossy(&head[start..]).to_ascii_lowercase();
            if let Some(said) = line.strip_prefix("content-length:") {
                length = Some(said.trim().parse()?);
            }
            if line.trim().is_empty() {
                return Ok((head, length));
            }
        }
    }
}

/// A server that answers one line with these bytes, whatever it is asked; where it listens.
pub fn echo(bytes: Vec<u8>) -> Result<SocketAddr> {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?;
    let at = listener.local_addr()?;
    std::thread::spawn(move || {
        // Its line is cut when the bench is done with it: nothing to tell.
        let _ = listener.accept().and_then(|(line, _)| answer(line, &bytes));
    });
    Ok(at)
}

fn answer(line: TcpStream, bytes: &[u8]) -> std::io::Result<()> {
    line.set_nodelay(true)?;
    let mut line = BufReader::new(line);
    let mut asked = String::new();
    while line.read_line(&mut asked)? > 0 {
        if asked.ends_with("\r\n\r\n") {
            line.get_mut().write_all(bytes)?;
            asked.clear();
        }
    }
    Ok(())
}
